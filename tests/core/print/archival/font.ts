import type { PDFDict, PDFObject } from 'pdf-lib';
import { type FontProgram, readFontProgram } from './font-program.ts';
import { contentOf, get, listOf, nameOf, numberOf } from './objects.ts';

/** A composite font of a file (ISO 32000-1, 9.7), read as an outsider would. */
export interface Font {
  dict: PDFDict;
  descendant: PDFObject | undefined;
  name: string;
  program: FontProgram | undefined;
  /** Text of a code, by the ToUnicode map; undefined where it has none. */
  textOf: (code: number) => string | undefined;
  /** Glyph of a code, undefined where there is no map. */
  glyphOf: ((code: number) => number) | undefined;
  /** Width of a code in thousandths, by the font dictionary. */
  widthOf: (code: number) => number;
}

const bytesOf = (hex: string): string => {
  const units = hex.match(/.{4}/g) ?? [];
  return String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16)));
};

// The blocks of a ToUnicode map (ISO 32000-1, 9.10.3).
function unicodeMap(stream: PDFObject | undefined): Map<number, string> {
  const map = new Map<number, string>();
  const source = Buffer.from(contentOf(stream) ?? []).toString('latin1');
  for (const [, block = ''] of source.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, code = '', text = ''] of block.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>/gi))
      map.set(Number.parseInt(code, 16), bytesOf(text));
  }
  for (const [, block = ''] of source.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, from = '', to = '', text = ''] of block.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>\s*<([0-9a-f]+)>/gi)) {
      const [first, last] = [from, to].map((hex) => Number.parseInt(hex, 16)) as [number, number];
      const units = bytesOf(text);
      const unit = units.charCodeAt(units.length - 1);
      for (let code = first; code <= last; code++)
        map.set(code, units.slice(0, -1) + String.fromCharCode(unit + code - first));
    }
  }
  return map;
}

function widthMap(array: PDFObject | undefined): Map<number, number> {
  const widths = new Map<number, number>();
  const parts = listOf(array);
  for (let i = 0; i < parts.length; ) {
    const first = numberOf(parts[i]) ?? 0;
    const last = numberOf(parts[i + 1]);
    if (last === undefined) {
      for (const [n, width] of listOf(parts[i + 1]).entries()) widths.set(first + n, numberOf(width) ?? 0);
      i += 2;
      continue;
    }
    for (let code = first; code <= last; code++) widths.set(code, numberOf(parts[i + 2]) ?? 0);
    i += 3;
  }
  return widths;
}

function glyphMap(map: PDFObject | undefined): Font['glyphOf'] {
  if (nameOf(map) === 'Identity') return (code) => code;
  const bytes = contentOf(map);
  if (!bytes) return undefined;
  return (code) => ((bytes[2 * code] ?? 0) << 8) | (bytes[2 * code + 1] ?? 0);
}

/** Reads a font dictionary. */
export function readFont(dict: PDFDict): Font {
  const [descendant] = listOf(get(dict, 'DescendantFonts'));
  const program = contentOf(get(descendant, 'FontDescriptor', 'FontFile2'));
  const texts = unicodeMap(get(dict, 'ToUnicode'));
  const widths = widthMap(get(descendant, 'W'));
  const standardWidth = numberOf(get(descendant, 'DW')) ?? 1000;
  return {
    dict,
    descendant,
    name: nameOf(get(dict, 'BaseFont')) ?? '',
    program: program && readFontProgram(program),
    textOf: (code) => texts.get(code),
    glyphOf: glyphMap(get(descendant, 'CIDToGIDMap')),
    widthOf: (code) => widths.get(code) ?? standardWidth,
  };
}
