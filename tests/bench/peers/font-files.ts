import { inflateSync } from 'node:zlib';
import { BUILT_FACES } from '../../../worker/print/fonts/face.ts';

/** The fonts that ours are set in, as files: they are subset already, so that no maker has that to do. */
export function fontFiles(): { regular: Buffer; semibold: Buffer } {
  const file = (program: string): Buffer => inflateSync(Buffer.from(program, 'base64'));
  return { regular: file(BUILT_FACES.regular.program), semibold: file(BUILT_FACES.semibold.program) };
}
