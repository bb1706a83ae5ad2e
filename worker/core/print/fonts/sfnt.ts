import { readKerning } from './kerning.ts';

/** Data of a TrueType file for the typesetter; glyphs by number. Lengths are in thousandths of the type size. */
export interface FontFacts {
  glyphOf: ReadonlyMap<number, number>;
  advanceOf: (glyph: number) => number;
  ascent: number;
  descent: number;
  capHeight: number;
  italicAngleDeg: number;
  box: readonly [xMin: number, yMin: number, xMax: number, yMax: number];
}

function tablesOf(view: DataView): (tag: string) => DataView {
  const tables = new Map<string, DataView>();
  for (let i = 0; i < view.getUint16(4); i++) {
    const at = 12 + 16 * i;
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((n) => view.getUint8(at + n)));
    tables.set(tag, new DataView(view.buffer, view.byteOffset + view.getUint32(at + 8), view.getUint32(at + 12)));
  }
  return (tag) => {
    const table = tables.get(tag);
    if (!table) throw new Error(`Cannot read font: table ${tag} must be present`);
    return table;
  };
}

// Segment mapping to delta values, OpenType specification, cmap format 4.
function readSegments(table: DataView): Map<number, number> {
  const glyphOf = new Map<number, number>();
  const doubled = table.getUint16(6);
  for (let i = 0; i < doubled; i += 2) {
    const end = table.getUint16(14 + i);
    const start = table.getUint16(16 + doubled + i);
    const delta = table.getInt16(16 + 2 * doubled + i);
    const rangeAt = 16 + 3 * doubled + i;
    const range = table.getUint16(rangeAt);
    for (let code = start; code <= end && code !== 0xffff; code++) {
      const listed = range === 0 ? code : table.getUint16(rangeAt + range + 2 * (code - start));
      const glyph = range !== 0 && listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) glyphOf.set(code, glyph);
    }
  }
  return glyphOf;
}

function readCharacterMap(cmap: DataView): Map<number, number> {
  for (let i = 0; i < cmap.getUint16(2); i++) {
    const subtable = new DataView(cmap.buffer, cmap.byteOffset + cmap.getUint32(4 + 8 * i + 4));
    if (subtable.getUint16(0) === 4) return readSegments(subtable);
  }
  throw new Error('Cannot read font: a character map of format 4 must be present');
}

/** Reads the tables of a TrueType file. Throws if one is missing. Source: OpenType specification 1.9. */
export function readFontFacts(file: Uint8Array): FontFacts {
  const table = tablesOf(new DataView(file.buffer, file.byteOffset, file.byteLength));
  const [head, hhea, hmtx, os2, post] = [table('head'), table('hhea'), table('hmtx'), table('OS/2'), table('post')];
  const perThousand = (units: number): number => Math.round((units * 1000) / head.getUint16(18));
  const longMetrics = hhea.getUint16(34);
  return {
    glyphOf: readCharacterMap(table('cmap')),
    advanceOf: (glyph) => perThousand(hmtx.getUint16(4 * Math.min(glyph, longMetrics - 1))),
    ascent: perThousand(hhea.getInt16(4)),
    descent: perThousand(hhea.getInt16(6)),
    capHeight: perThousand(os2.getInt16(88)),
    italicAngleDeg: post.getInt32(4) / 65536,
    box: [36, 38, 40, 42].map((at) => perThousand(head.getInt16(at))) as [number, number, number, number],
  };
}

/** Reads the kerning of pairs of glyphs of a TrueType file, in thousandths of the type size. Throws if it has no GPOS table. */
export function readFontKerning(file: Uint8Array): (left: number, right: number) => number {
  const table = tablesOf(new DataView(file.buffer, file.byteOffset, file.byteLength));
  const kern = readKerning(table('GPOS'));
  const unitsPerEm = table('head').getUint16(18);
  return (left, right) => Math.round((kern(left, right) * 1000) / unitsPerEm);
}
