// Reads the kerning of a font: pair adjustments of the feature `kern` (OpenType specification 1.9, GPOS lookup type 2).
// Only the advance of the first glyph of a pair is read: nothing else is used for horizontal kerning.

const PAIR_ADJUSTMENT = 2;
const EXTENSION = 9;
const X_ADVANCE = 4;

const at = (view: DataView, offset: number): DataView => new DataView(view.buffer, view.byteOffset + offset);

const range = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

// Sizes of a value record: two bytes per bit of its format, of which the advance is the third.
const bits = (format: number): number => format.toString(2).replaceAll('0', '').length;

function advanceIn(view: DataView, offset: number, format: number): number {
  return format & X_ADVANCE ? view.getInt16(offset + 2 * bits(format & (X_ADVANCE - 1))) : 0;
}

function coverageIndex(table: DataView, glyph: number): number {
  const count = table.getUint16(2);
  if (table.getUint16(0) === 1) return range(count).findIndex((i) => table.getUint16(4 + 2 * i) === glyph);
  for (const i of range(count)) {
    const [first, last] = [table.getUint16(4 + 6 * i), table.getUint16(6 + 6 * i)];
    if (glyph >= first && glyph <= last) return table.getUint16(8 + 6 * i) + glyph - first;
  }
  return -1;
}

function classOf(table: DataView, glyph: number): number {
  if (table.getUint16(0) === 1) {
    const place = glyph - table.getUint16(2);
    return place >= 0 && place < table.getUint16(4) ? table.getUint16(6 + 2 * place) : 0;
  }
  for (const i of range(table.getUint16(2))) {
    if (glyph >= table.getUint16(4 + 6 * i) && glyph <= table.getUint16(6 + 6 * i)) return table.getUint16(8 + 6 * i);
  }
  return 0;
}

// A subtable applies to a pair if it covers the first glyph and, with single pairs, contains the second; else the next
// one is tried.
function kernIn(subtable: DataView, left: number, right: number): number | null {
  const covered = coverageIndex(at(subtable, subtable.getUint16(2)), left);
  if (covered < 0) return null;
  const [format1, format2] = [subtable.getUint16(4), subtable.getUint16(6)];
  const valuesBytes = 2 * (bits(format1) + bits(format2));
  if (subtable.getUint16(0) === 1) {
    const set = at(subtable, subtable.getUint16(10 + 2 * covered));
    const step = 2 + valuesBytes;
    const found = range(set.getUint16(0)).find((i) => set.getUint16(2 + step * i) === right);
    return found === undefined ? null : advanceIn(set, 4 + step * found, format1);
  }
  const row = classOf(at(subtable, subtable.getUint16(8)), left);
  const column = classOf(at(subtable, subtable.getUint16(10)), right);
  const columns = subtable.getUint16(14);
  return advanceIn(subtable, 16 + valuesBytes * (row * columns + column), format1);
}

function lookupSubtables(lookup: DataView): DataView[] {
  const type = lookup.getUint16(0);
  const subtables = range(lookup.getUint16(4)).map((i) => at(lookup, lookup.getUint16(6 + 2 * i)));
  if (type === EXTENSION) {
    return subtables.filter((each) => each.getUint16(2) === PAIR_ADJUSTMENT).map((each) => at(each, each.getUint32(4)));
  }
  return type === PAIR_ADJUSTMENT ? subtables : [];
}

function kernLookups(gpos: DataView): DataView[][] {
  const features = at(gpos, gpos.getUint16(6));
  const lookups = at(gpos, gpos.getUint16(8));
  const indices = new Set<number>();
  for (const i of range(features.getUint16(0))) {
    if (features.getUint32(2 + 6 * i) !== 0x6b65726e) continue; // 'kern'
    const feature = at(features, features.getUint16(6 + 6 * i));
    for (const n of range(feature.getUint16(2))) indices.add(feature.getUint16(4 + 2 * n));
  }
  return [...indices]
    .sort((a, b) => a - b)
    .map((index) => lookupSubtables(at(lookups, lookups.getUint16(2 + 2 * index))));
}

/** Reads the kerning of pairs of glyphs in font units from a GPOS table: the addition to the advance of the first. */
export function readKerning(gpos: DataView): (left: number, right: number) => number {
  const lookups = kernLookups(gpos);
  return (left, right) => {
    let total = 0;
    for (const subtables of lookups) {
      for (const subtable of subtables) {
        const kern = kernIn(subtable, left, right);
        if (kern === null) continue;
        total += kern;
        break;
      }
    }
    return total;
  };
}
