import { randomUUID } from 'node:crypto';
import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { build } from 'esbuild';
import { ROOT, WORKER } from './places.ts';

/** Bundles the Worker into one ES module, `dist/worker.js`, as the platform would. */
export async function bundle(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(WORKER, 'index.ts')],
    absWorkingDir: ROOT,
    bundle: true,
    format: 'esm',
    target: 'es2024',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    conditions: ['workerd', 'worker', 'browser'],
    external: ['cloudflare:*'],
    alias: { '@pdf-lib/standard-fonts': join(WORKER, 'core/print/file/no-standard-fonts.ts') },
    minifySyntax: true,
    minifyWhitespace: true,
    sourcemap: false,
    logLevel: 'error',
    write: false,
  });
  const [worker] = outputFiles;
  if (!worker) throw new Error('Cannot bundle the Worker');
  const path = join(ROOT, 'dist/worker.js');
  replace(path, worker.contents);
  return path;
}

/**
 * Replaces a file in one step. Other readers, such as parallel tests, get the old file or the new one, never a part.
 */
function replace(path: string, contents: Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  const beside = `${path}.${randomUUID()}`;
  writeFileSync(beside, contents);
  renameSync(beside, path);
}
