import { join } from 'node:path';
import { build } from 'esbuild';
import { PAGES } from './pages.ts';

/** Writes the scripts of the pages, each as one file: those of the site, the owner's page, and the core's thread. */
export async function writeScripts(root: string): Promise<void> {
  const ofPages = PAGES.flatMap(({ script }) => (script === undefined ? [] : [script]));
  await bundled([...new Set([...ofPages, 'owner'])], join(root, 'assets'));
  await bundled(['thread/thread'], join(root, 'assets'), 'thread');
  // The scope of a service worker is its own folder, so it is written to the root.
  await bundled(['offline'], root);
}

async function bundled(names: readonly string[], folder: string, called = '[name]'): Promise<void> {
  await build({
    entryPoints: names.map((name) => join(import.meta.dirname, '../browser', `${name}.ts`)),
    outdir: folder,
    entryNames: called,
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    platform: 'browser',
    alias: {
      '@pdf-lib/standard-fonts': join(import.meta.dirname, '../../worker/core/print/file/no-standard-fonts.ts'),
    },
    logLevel: 'error',
  });
}
