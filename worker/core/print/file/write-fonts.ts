import { FONT_NAMES } from '../draw/canvas.ts';
import type { BuiltFace } from '../fonts/built-face.ts';
import { BUILT_FACES, FACE_CHARACTERS, type FaceName } from '../fonts/face.ts';
import { bytesFromBase64 } from './base64.ts';
import type { ObjectStore } from './object-store.ts';

// A bfrange or bfchar block has max. 100 entries (Adobe Technical Note 5014).
const ENTRIES_A_BLOCK = 100;

// Subset tags are six capitals (ISO 32000-1, 9.6.4); every pack has the same subset, so they are fixed.
const SUBSET_TAGS: Readonly<Record<FaceName, string>> = { regular: 'SLMREG', semibold: 'SLMSEM', italic: 'SLMITA' };

const hex = (code: number): string => code.toString(16).padStart(4, '0');

// Runs of consecutive code points with the same high byte, as bfrange requires.
function ranges(): [from: number, to: number][] {
  const found: [number, number][] = [];
  for (const code of FACE_CHARACTERS) {
    const last = found.at(-1);
    if (last && code === last[1] + 1 && code >> 8 === last[0] >> 8) last[1] = code;
    else found.push([code, code]);
  }
  return found;
}

// Glyph codes are code points, so the map from codes to text is the identity over the characters of the faces.
function toUnicode(): string {
  const lines = ranges().map(([from, to]) => `<${hex(from)}> <${hex(to)}> <${hex(from)}>`);
  const blocks: string[] = [];
  for (let i = 0; i < lines.length; i += ENTRIES_A_BLOCK) {
    const block = lines.slice(i, i + ENTRIES_A_BLOCK);
    blocks.push(`${block.length} beginbfrange\n${block.join('\n')}\nendbfrange`);
  }
  return [
    '/CIDInit /ProcSet findresource begin 12 dict begin begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def /CMapType 2 def',
    '1 begincodespacerange\n<0000> <ffff>\nendcodespacerange',
    ...blocks,
    'endcmap CMapName currentdict /CMap defineresource pop end end',
  ].join('\n');
}

function widths(face: BuiltFace): string {
  let at = 0;
  const parts = ranges().map(([from, to]) => {
    const advances = face.advances.slice(at, at + to - from + 1);
    at += advances.length;
    return `${from}[${advances.join(' ')}]`;
  });
  return `[${parts.join('')}]`;
}

// Font descriptor flags (ISO 32000-1, table 123): characters beyond standard Latin, slanted letters.
const SYMBOLIC = 4;
const ITALIC = 64;

function writeFace(name: FaceName, face: BuiltFace, unicode: string, store: ObjectStore): string {
  const base = `/${SUBSET_TAGS[name]}+${face.name}`;
  const program = store.addPlainStream(
    bytesFromBase64(face.program),
    { Length1: String(face.programBytes) },
    'FlateDecode',
  );
  const glyphMap = store.addPlainStream(bytesFromBase64(face.glyphMap), {}, 'FlateDecode');
  const flags = SYMBOLIC | (name === 'italic' ? ITALIC : 0);
  const descriptor = store.add(
    `<</Type/FontDescriptor/FontName${base}/Flags ${flags}/FontBBox[${face.box.join(' ')}]/ItalicAngle ${face.italicAngleDeg}` +
      `/Ascent ${face.ascent}/Descent ${face.descent}/CapHeight ${face.capHeight}/StemV ${name === 'semibold' ? 120 : 80}/FontFile2 ${program}>>`,
  );
  const descendant = store.add(
    `<</Type/Font/Subtype/CIDFontType2/BaseFont${base}/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>` +
      `/FontDescriptor ${descriptor}/CIDToGIDMap ${glyphMap}/DW 0/W${widths(face)}>>`,
  );
  return store.add(
    `<</Type/Font/Subtype/Type0/BaseFont${base}/Encoding/Identity-H/DescendantFonts[${descendant}]/ToUnicode ${unicode}>>`,
  );
}

/** Writes the faces and returns the font resources of a page, as a dictionary. */
export function writeFonts(store: ObjectStore): string {
  const unicode = store.addStream(toUnicode());
  const entries = (Object.keys(BUILT_FACES) as FaceName[]).map((name) => {
    return `/${FONT_NAMES[name]} ${writeFace(name, BUILT_FACES[name], unicode, store)}`;
  });
  return `<<${entries.join('')}>>`;
}
