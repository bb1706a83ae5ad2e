import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';

export const SECRETS = { admin: 'secret-of-the-test-deployment', seal: 'seal-secret-of-the-test-deployment' } as const;

/** The real service on a storage folder, in processes that can be ended from one instruction to the next. */
export interface KillableService {
  origin: string;
  /** SIGKILL to Node and workerd at once; resolves once both are gone. */
  kill(): Promise<void>;
  /** SIGKILL to Node alone: resolves to the workerd that it leaves behind. */
  orphan(): Promise<number[]>;
  /** SIGKILL to workerd, which holds all storage; Node starts it again. Resolves once the new one answers. */
  killWorkerd(): Promise<void>;
}

/** A storage folder for one test, and how to be rid of it. */
export function temporaryStorage(): { storage: string; remove(): void } {
  const storage = mkdtempSync(join(tmpdir(), 'slipmark-faults-'));
  return { storage, remove: () => rmSync(storage, { recursive: true, force: true }) };
}

/**
 * Starts the bundled Worker in a process group of its own.
 *
 * @param script path of the bundled Worker
 * @throws Error when the process ends before it serves
 */
export async function startKillable(script: string, storage: string): Promise<KillableService> {
  const entry = join(import.meta.dirname, 'service-process.ts');
  const child = spawn(process.execPath, [entry, script, storage, SECRETS.admin, SECRETS.seal], {
    detached: true,
    stdio: ['pipe', 'pipe', 'inherit'],
    env: { ...process.env, NODE_COMPILE_CACHE: join(storage, 'compiled') },
  });
  const ended = once(child, 'close');
  const { value: origin } = await createInterface({ input: child.stdout })[Symbol.asyncIterator]().next();
  if (typeof origin !== 'string') throw new Error('Cannot start the service: its process ended');
  return {
    origin,
    kill: () => killGroup(child, ended),
    orphan: () => killNode(child),
    killWorkerd: () => killWorkerd(child, origin),
  };
}

async function killNode(child: ChildProcess): Promise<number[]> {
  if (child.pid === undefined) return [];
  const left = childrenOf(child.pid);
  const exited = once(child, 'exit');
  child.kill('SIGKILL');
  await exited;
  return left;
}

async function killGroup({ pid }: ChildProcess, ended: Promise<unknown>): Promise<void> {
  if (pid === undefined) return;
  process.kill(-pid, 'SIGKILL');
  await ended;
}

const childrenOf = (pid: number): number[] =>
  execFileSync('pgrep', ['-P', String(pid)], { encoding: 'utf8' })
    .trim()
    .split('\n')
    .map(Number);

async function killWorkerd({ pid }: ChildProcess, origin: string): Promise<void> {
  if (pid === undefined) return;
  for (const workerd of childrenOf(pid)) process.kill(workerd, 'SIGKILL');
  // The kernel closes the sockets of the dead before the next process can listen, so whoever answers is the new one.
  while (!(await isServing(origin))) await pause(10);
}

async function isServing(origin: string): Promise<boolean> {
  try {
    return (await fetch(`${origin}/healthz`)).ok;
  } catch {
    return false;
  }
}
