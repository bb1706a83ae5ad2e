import { join } from 'node:path';
import { build } from 'esbuild';
import { ROOT, WORKER } from './places.ts';

/** Bundles the Worker into one ES module, `dist/worker.js`, as the platform would. */
export async function bundle(): Promise<string> {
  const result = await build({
    entryPoints: [join(WORKER, 'index.ts')],
    outfile: join(ROOT, 'dist/worker.js'),
    absWorkingDir: ROOT,
    bundle: true,
    format: 'esm',
    target: 'es2024',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    conditions: ['workerd', 'worker', 'browser'],
    external: ['cloudflare:*'],
    minifySyntax: true,
    minifyWhitespace: true,
    sourcemap: false,
    logLevel: 'error',
    write: true,
    metafile: false,
  });
  if (result.errors.length > 0) throw new Error('Cannot bundle the Worker');
  return join(ROOT, 'dist/worker.js');
}
