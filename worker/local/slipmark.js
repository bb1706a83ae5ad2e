#!/usr/bin/env node
// The command of the repository: npx slipmark. Plain JavaScript, so that an old Node can report why it cannot run the
// rest.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const OLDEST_NODE = [22, 18];
const NOT_UNDERSTOOD = 2;

const root = fileURLToPath(new URL('../..', import.meta.url));
const made = join(root, 'worker/client/generated/api.ts');

/** Whether Node runs TypeScript without a flag. */
function isNodeNewEnough() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [oldestMajor, oldestMinor] = OLDEST_NODE;
  return major > oldestMajor || (major === oldestMajor && minor >= oldestMinor);
}

/** Returns when the newest source below a folder was written; output of a build does not count. */
function newestIn(folder) {
  const entries = readdirSync(join(root, folder), { recursive: true, withFileTypes: true });
  const sources = entries.filter((entry) => entry.isFile() && !/[\\/](generated|dist)([\\/]|$)/.test(entry.parentPath));
  return Math.max(...sources.map(({ parentPath, name }) => statSync(join(parentPath, name)).mtimeMs));
}

const isBuilt = () => existsSync(made) && statSync(made).mtimeMs >= Math.max(...['worker', 'templates'].map(newestIn));

/** Builds messages, templates, fonts and the client from their sources, once after they changed. */
function build() {
  for (const script of [
    'worker/core/text/build/build.ts',
    'templates/compile.ts',
    'worker/core/print/fonts/build.ts',
    'worker/client/generate.ts',
  ]) {
    const { status } = spawnSync(process.execPath, [script], { cwd: root, stdio: ['ignore', 2, 2] });
    if (status !== 0) return false;
  }
  return true;
}

if (!isNodeNewEnough()) {
  console.error(
    `Slipmark needs Node ${OLDEST_NODE.join('.')} or later, which runs TypeScript by itself; this is ${process.versions.node}. In the repository, npx slipmark and npm run slipmark take the Node that npm ci brings.`,
  );
  process.exitCode = NOT_UNDERSTOOD;
} else if (!isBuilt() && !build()) process.exitCode = NOT_UNDERSTOOD;
else {
  const { run } = await import('./command/run.ts');
  process.exitCode = await run(process.argv.slice(2));
}
