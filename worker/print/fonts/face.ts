import type { BuiltFace } from './built-face.ts';
import { CHARACTERS, FACES } from './generated/fonts.js';

/** The faces a pack is set in. */
export type FaceName = keyof typeof FACES;

/** The built faces by name, and the code points that each of them holds, ascending. */
export const BUILT_FACES: Readonly<Record<FaceName, BuiltFace>> = FACES;
export const FACE_CHARACTERS: readonly number[] = CHARACTERS;

function advanceTable(face: BuiltFace): Uint16Array {
  const table = new Uint16Array(Math.max(...CHARACTERS) + 1);
  CHARACTERS.forEach((codePoint, i) => {
    table[codePoint] = face.advances[i] ?? 0;
  });
  return table;
}

const ADVANCES: Readonly<Record<FaceName, Uint16Array>> = {
  regular: advanceTable(FACES.regular),
  semibold: advanceTable(FACES.semibold),
  italic: advanceTable(FACES.italic),
};

/** Width in points of a text of printable characters. */
export function textWidthPt(text: string, face: FaceName, sizePt: number): number {
  const advances = ADVANCES[face];
  let thousandths = 0;
  for (let i = 0; i < text.length; i++) thousandths += advances[text.charCodeAt(i)] ?? 0;
  return (thousandths * sizePt) / 1000;
}
