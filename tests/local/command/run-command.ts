import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { ROOT } from '../../../worker/local/service/places.ts';

export interface Outcome {
  code: number;
  stdout: string;
  stderr: string;
}

export interface RunOptions {
  /** Key of the workshop, as the environment has it. */
  key?: string;
  /** What comes in by standard input. */
  input?: string;
  /** Arguments for Node itself. */
  node?: readonly string[];
}

/** Runs the command of the repository as npm and npx would. */
export function runCommand(
  args: readonly string[],
  { key = '', input = '', node = [] }: RunOptions = {},
): Promise<Outcome> {
  const file = join(ROOT, 'worker/local/slipmark.js');
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [...node, file, ...args], { env: { ...process.env, SLIPMARK_KEY: key } });
    const said = { stdout: '', stderr: '' };
    for (const stream of ['stdout', 'stderr'] as const)
      child[stream].setEncoding('utf8').on('data', (text: string) => {
        said[stream] += text;
      });
    child.on('error', reject).on('close', (code) => resolve({ code: code ?? -1, ...said }));
    child.stdin.end(input);
  });
}
