import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, readlinkSync, realpathSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';

/** Time that a terminated process may take to end. */
const ENDING_MS = 5_000;

/**
 * Ends runtimes whose parent process has died: they use the storage and would write to it next to a new one. Called
 * with the lock taken, so no supervised runtime is among them.
 *
 * @throws Error if one cannot be ended
 */
export async function endOrphans(storage: string): Promise<void> {
  for (const pid of holdersOf(storage)) {
    process.kill(pid, 'SIGKILL');
    const lastMs = Date.now() + ENDING_MS;
    while (holdersOf(storage).includes(pid)) {
      if (Date.now() > lastMs)
        throw new Error(`Cannot start: process ${pid}, left behind by an earlier start, still holds ${storage}`);
      await pause(20);
    }
  }
}

/** Returns the runtimes that have files of a storage folder open; none if the machine does not report them. */
export function holdersOf(storage: string): number[] {
  const folder = `${realpathSync(storage)}/`;
  return process.platform === 'linux' ? holdersByProc(folder) : holdersByLsof(folder);
}

function holdersByProc(folder: string): number[] {
  const pids = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  return pids.filter((pid) => isRuntime(pid) && opensIn(pid, folder)).map(Number);
}

/**
 * Whether a process is a runtime. Processes come and go during the check, and those of other users are not readable.
 */
function isRuntime(pid: string): boolean {
  try {
    return readFileSync(`/proc/${pid}/comm`, 'utf8').trim() === 'workerd';
  } catch {
    return false;
  }
}

function opensIn(pid: string, folder: string): boolean {
  try {
    const open = readdirSync(`/proc/${pid}/fd`).map((file) => linkOf(`/proc/${pid}/fd/${file}`));
    return open.some((path) => `${path}/`.startsWith(folder));
  } catch {
    return false;
  }
}

function linkOf(path: string): string {
  try {
    return readlinkSync(path);
  } catch {
    return '';
  }
}

function holdersByLsof(folder: string): number[] {
  try {
    const found = execFileSync('lsof', ['-t', '-c', 'workerd', '-a', '+D', folder], { encoding: 'utf8' });
    return found.trim().split('\n').map(Number);
  } catch {
    // No process has it open, or there is no lsof.
    return [];
  }
}
