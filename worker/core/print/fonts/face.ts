import type { BuiltFace } from './built-face.ts';
import { CHARACTERS, FACES } from './generated/fonts.js';

/** Typefaces of a pack. */
export type FaceName = keyof typeof FACES;

/** Built faces by name, and the code points in each of them, ascending. */
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

// Only pairs of ASCII characters are kerned, so a small square table is enough.
const KERNED = 128;

function kerningTable(face: BuiltFace): Int8Array {
  const table = new Int8Array(KERNED * KERNED);
  for (let i = 0; i < face.kerning.length; i += 3) {
    table[(face.kerning[i] ?? 0) * KERNED + (face.kerning[i + 1] ?? 0)] = face.kerning[i + 2] ?? 0;
  }
  return table;
}

const KERNING: Readonly<Record<FaceName, Int8Array>> = {
  regular: kerningTable(FACES.regular),
  semibold: kerningTable(FACES.semibold),
  italic: kerningTable(FACES.italic),
};

/** Returns the kerning between two characters, by code point, in thousandths of the type size. */
export function kerning(face: FaceName, left: number, right: number): number {
  return left < KERNED && right < KERNED ? (KERNING[face][left * KERNED + right] ?? 0) : 0;
}

/** Returns the width in points of a text of printable characters, kerned. */
export function textWidthPt(text: string, face: FaceName, sizePt: number): number {
  const advances = ADVANCES[face];
  const kerns = KERNING[face];
  let thousandths = 0;
  let left = KERNED;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    thousandths += advances[code] ?? 0;
    if (left < KERNED && code < KERNED) thousandths += kerns[left * KERNED + code] ?? 0;
    left = code;
  }
  return (thousandths * sizePt) / 1000;
}
