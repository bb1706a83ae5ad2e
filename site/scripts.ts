import { join } from 'node:path';
import { build } from 'esbuild';
import { PAGES } from './pages.ts';

/** Writes the code of the pages that run any, each as one file. */
export async function writeScripts(folder: string): Promise<void> {
  const names = PAGES.flatMap(({ script }) => (script === undefined ? [] : [script]));
  await build({
    entryPoints: names.map((name) => join(import.meta.dirname, 'client', `${name}.ts`)),
    outdir: folder,
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    platform: 'browser',
    logLevel: 'error',
  });
}
