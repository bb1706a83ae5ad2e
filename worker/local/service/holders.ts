import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, readlinkSync, realpathSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';

/** How long a process that was told to end may take. */
const ENDING_MS = 5_000;

/**
 * Ends runtimes that outlived the process that had started them, as when that alone was killed: they hold the storage and would go on
 * writing beside a new one. Called by whoever has the lock, so no runtime that is looked after is among them.
 *
 * @throws Error when one cannot be ended
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

/** The runtimes that have files of a storage folder open; none where the machine does not tell. */
export function holdersOf(storage: string): number[] {
  const folder = `${realpathSync(storage)}/`;
  return process.platform === 'linux' ? holdersByProc(folder) : holdersByLsof(folder);
}

function holdersByProc(folder: string): number[] {
  const pids = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  return pids.filter((pid) => isRuntime(pid) && opensIn(pid, folder)).map(Number);
}

/** Processes come and go while they are looked at, and those of others do not tell. */
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
    // Nobody holds it, or there is no lsof.
    return [];
  }
}
