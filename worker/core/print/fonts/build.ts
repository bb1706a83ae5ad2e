// Node script: node worker/core/print/fonts/build.ts
// Writes generated/fonts.js: the faces subset to the printable characters, deflated, with the advances text is measured by.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { deflateSync } from 'node:zlib';
import subsetFont from 'subset-font';
import { PRINTABLE_RANGES, PRINTABLE_SIGNS } from '../../text/printable.ts';
import type { BuiltFace } from './built-face.ts';
import { type FontFacts, readFontFacts, readFontKerning } from './sfnt.ts';

const FACES = { regular: 'Regular', semibold: 'Semibold', italic: 'It' } as const;

// Kerning is read in advance, other shaping is not used, and hints are for coarse screens.
const UNUSED_TABLES = ['GSUB', 'GPOS', 'GDEF', 'BASE', 'DSIG', 'gasp', 'STAT'];

const require = createRequire(import.meta.url);
const base64 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('base64');

const characters = [
  ...PRINTABLE_RANGES.flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => from + i)),
  ...[...PRINTABLE_SIGNS].map((sign) => sign.codePointAt(0) ?? 0),
].sort((a, b) => a - b);

function glyphFor(facts: FontFacts, face: string, codePoint: number): number {
  const glyph = facts.glyphOf.get(codePoint);
  if (glyph === undefined) throw new Error(`Cannot build face ${face}: no glyph for U+${codePoint.toString(16)}`);
  return glyph;
}

// The characters of a pack are written as their code points; this stream maps them to glyphs for the reader.
function glyphMap(facts: FontFacts, face: string): Uint8Array {
  const map = new DataView(new ArrayBuffer(2 * (Math.max(...characters) + 1)));
  for (const codePoint of characters) map.setUint16(2 * codePoint, glyphFor(facts, face, codePoint));
  return new Uint8Array(map.buffer);
}

// Figures are in columns and break positions must not shift the letters next to them, so neither is kerned.
const KERNED = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz.,:;!?()\'"'].map((sign) => sign.charCodeAt(0));

function kerningPairs(file: Uint8Array, face: string): number[] {
  const facts = readFontFacts(file);
  const kerning = readFontKerning(file);
  return KERNED.flatMap((left) =>
    KERNED.flatMap((right) => {
      const kern = kerning(glyphFor(facts, face, left), glyphFor(facts, face, right));
      return kern === 0 ? [] : [left, right, kern];
    }),
  );
}

async function buildFace(face: string, file: string): Promise<BuiltFace> {
  const whole = readFileSync(require.resolve(`source-sans/TTF/SourceSans3-${file}.ttf`));
  const program = await subsetFont(whole, String.fromCodePoint(...characters), {
    targetFormat: 'sfnt',
    keepFeatures: [],
    noLayoutClosure: true,
    noHinting: true,
    dropTables: UNUSED_TABLES,
  });
  const facts = readFontFacts(new Uint8Array(program));
  const advances = characters.map((codePoint) => facts.advanceOf(glyphFor(facts, face, codePoint)));
  const figures = new Set([...'0123456789'].map((figure) => advances[characters.indexOf(figure.charCodeAt(0))]));
  if (figures.size !== 1) throw new Error(`Cannot build face ${face}: figures must be of one width`);
  return {
    name: `SourceSans3-${file}`,
    program: base64(deflateSync(program, { level: 9 })),
    programBytes: program.length,
    glyphMap: base64(deflateSync(glyphMap(facts, face), { level: 9 })),
    advances,
    kerning: kerningPairs(new Uint8Array(whole), face),
    ascent: facts.ascent,
    descent: facts.descent,
    capHeight: facts.capHeight,
    italicAngleDeg: facts.italicAngleDeg,
    box: facts.box,
  };
}

const faces = Object.fromEntries(
  await Promise.all(Object.entries(FACES).map(async ([face, file]) => [face, await buildFace(face, file)])),
);
const folder = `${import.meta.dirname}/generated`;
mkdirSync(folder, { recursive: true });
writeFileSync(
  `${folder}/fonts.js`,
  `// Written by worker/core/print/fonts/build.ts.\nexport const CHARACTERS = ${JSON.stringify(characters)};\nexport const FACES = ${JSON.stringify(faces)};\n`,
);
