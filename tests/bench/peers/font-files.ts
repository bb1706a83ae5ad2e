import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { inflateSync } from 'node:zlib';
import { BUILT_FACES } from '../../../worker/core/print/fonts/face.ts';

/**
 * The fonts of the bench as files: as they are published, which is what a maker is usually given, or with `BENCH_FONTS=subset` the files
 * that ours embeds, which spares the others nearly all work on fonts.
 */
export function fontFiles(): { regular: Buffer; semibold: Buffer } {
  if (process.env.BENCH_FONTS === 'subset') {
    const subset = (program: string): Buffer => inflateSync(Buffer.from(program, 'base64'));
    return { regular: subset(BUILT_FACES.regular.program), semibold: subset(BUILT_FACES.semibold.program) };
  }
  const { resolve } = createRequire(import.meta.url);
  const published = (face: string): Buffer => readFileSync(resolve(`source-sans/TTF/SourceSans3-${face}.ttf`));
  return { regular: published('Regular'), semibold: published('Semibold') };
}
