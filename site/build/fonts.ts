import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import subsetFont from 'subset-font';
import { PRINTABLE_RANGES, PRINTABLE_SIGNS } from '../../worker/core/text/printable.ts';
import { mathSigns } from '../formulas/math-signs.ts';
import { formulas } from '../pages/formulas.ts';

const require = createRequire(import.meta.url);

const FACES = ['Regular', 'Semibold'] as const;

/**
 * Names of the subset fonts. The licence reserves the original name for unaltered copies, and a subset is altered. Each
 * new name has the length of the old one, so no table of the file moves.
 */
const RENAMED = [
  ['Source Sans 3', 'Slipmark Text'],
  ['SourceSans3', 'SlipmarkTxt'],
] as const;

const OPTIONS = {
  targetFormat: 'woff2',
  keepFeatures: ['kern', 'tnum'],
  noLayoutClosure: false,
  noHinting: true,
  dropTables: [],
} as const;

const MATH = '@fontsource/noto-sans-math';

const NOTICE = `Slipmark Text is Source Sans 3, reduced to the characters that a pack can print, and renamed as its licence asks.

`;

const MATH_NOTICE = `

The face of the formulas is Noto Sans Math, reduced to the signs that they are written with.

`;

/** Writes the screen fonts, which are those of the documents, the font of the formulas, and their licences. */
export async function writeFonts(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  for (const face of FACES) {
    const file = readFileSync(require.resolve(`source-sans/TTF/SourceSans3-${face}.ttf`));
    const subset = await subsetFont(renamed(file), printable(), OPTIONS);
    writeFileSync(join(folder, `${face.toLowerCase()}.woff2`), subset);
  }
  const math = readFileSync(require.resolve(`${MATH}/files/noto-sans-math-latin-400-normal.woff2`));
  writeFileSync(
    join(folder, 'math.woff2'),
    await subsetFont(math, mathSigns(formulas.body), { targetFormat: 'woff2' }),
  );
  const licence = readFileSync(require.resolve('source-sans/LICENSE.md'), 'utf8');
  const mathLicence = readFileSync(require.resolve(`${MATH}/LICENSE`), 'utf8');
  writeFileSync(join(folder, 'licence.txt'), NOTICE + licence + MATH_NOTICE + mathLicence);
}

function printable(): string {
  const spans = PRINTABLE_RANGES.map(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => from + i));
  return String.fromCodePoint(...spans.flat()) + PRINTABLE_SIGNS;
}

/** Returns the file with its new name, in both encodings of its name table. */
function renamed(file: Buffer): Buffer {
  const copy = Buffer.from(file);
  for (const [from, to] of RENAMED) {
    overwrite(copy, Buffer.from(from, 'latin1'), Buffer.from(to, 'latin1'));
    overwrite(copy, Buffer.from(from, 'utf16le').swap16(), Buffer.from(to, 'utf16le').swap16());
  }
  return copy;
}

function overwrite(file: Buffer, from: Buffer, to: Buffer): void {
  for (let at = file.indexOf(from); at >= 0; at = file.indexOf(from, at)) to.copy(file, at);
}
