/** What a TrueType file says of its glyphs; shares no code with the reader that the fonts are built with. */
export interface FontProgram {
  glyphs: number;
  /** In thousandths of the type size, not rounded. */
  advanceOf: (glyph: number) => number;
  /** By the Unicode map of the font; 0 for a character that it lacks. */
  glyphFor: (codePoint: number) => number;
}

const SEGMENTS = 4;
const GROUPS = 12;

/** Reads a TrueType file. Throws where a table is missing. Source: OpenType specification, `maxp`, `hmtx`, `cmap`. */
export function readFontProgram(bytes: Uint8Array): FontProgram {
  const file = Buffer.from(bytes);
  const table = (tag: string): Buffer => {
    for (let at = 12; at < 12 + 16 * file.readUInt16BE(4); at += 16) {
      if (file.toString('latin1', at, at + 4) !== tag) continue;
      const from = file.readUInt32BE(at + 8);
      return file.subarray(from, from + file.readUInt32BE(at + 12));
    }
    throw new Error(`Cannot read font: table ${tag} must be present`);
  };
  const unitsPerEm = table('head').readUInt16BE(18);
  const measured = table('hhea').readUInt16BE(34);
  const advances = table('hmtx');
  return {
    glyphs: table('maxp').readUInt16BE(4),
    advanceOf: (glyph) => (advances.readUInt16BE(4 * Math.min(glyph, measured - 1)) * 1000) / unitsPerEm,
    glyphFor: characterMap(table('cmap')),
  };
}

function characterMap(cmap: Buffer): (codePoint: number) => number {
  const subtables = Array.from({ length: cmap.readUInt16BE(2) }, (_, i) => cmap.subarray(cmap.readUInt32BE(8 + 8 * i)));
  const segments = subtables.find((subtable) => subtable.readUInt16BE(0) === SEGMENTS);
  if (segments) return (codePoint) => inSegments(segments, codePoint);
  const groups = subtables.find((subtable) => subtable.readUInt16BE(0) === GROUPS);
  if (!groups) throw new Error('Cannot read font: a Unicode map must be present');
  return (codePoint) => inGroups(groups, codePoint);
}

function inSegments(table: Buffer, codePoint: number): number {
  const doubled = table.readUInt16BE(6);
  for (let i = 0; i < doubled; i += 2) {
    if (codePoint > table.readUInt16BE(14 + i)) continue;
    const start = table.readUInt16BE(16 + doubled + i);
    if (codePoint < start) return 0;
    const delta = table.readUInt16BE(16 + 2 * doubled + i);
    const offsetAt = 16 + 3 * doubled + i;
    const offset = table.readUInt16BE(offsetAt);
    if (offset === 0) return (codePoint + delta) & 0xffff;
    const glyph = table.readUInt16BE(offsetAt + offset + 2 * (codePoint - start));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
}

function inGroups(table: Buffer, codePoint: number): number {
  for (let at = 16; at < 16 + 12 * table.readUInt32BE(12); at += 12) {
    const first = table.readUInt32BE(at);
    if (codePoint >= first && codePoint <= table.readUInt32BE(at + 4))
      return table.readUInt32BE(at + 8) + codePoint - first;
  }
  return 0;
}
