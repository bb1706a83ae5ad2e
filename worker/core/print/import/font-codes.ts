import type { Budget } from '../bytes/budget.ts';
import { isStream, nameOf, type PdfDictionary } from '../pdf-object.ts';
import { type CodeSpace, codeOf, readCodeMap } from './code-map.ts';
import { spendBytes } from './lexical-cost.ts';
import type { PdfFile } from './pdf-file.ts';

/**
 * Cuts a shown string into the codes of a font, and gives each to `take` until that wants no more; false where some of it is no code.
 * What it takes to go through the string is charged before.
 */
export type CodeCutter = (string: string, take: (code: number) => boolean) => boolean;

const bytewise =
  (budget: Budget): CodeCutter =>
  (string, take) => {
    spendBytes(budget, string.length);
    for (let i = 0; i < string.length; i++) if (!take(string.charCodeAt(i))) break;
    return true;
  };

const inPairs =
  (budget: Budget): CodeCutter =>
  (string, take) => {
    spendBytes(budget, string.length);
    for (let i = 0; i + 1 < string.length; i += 2)
      if (!take((string.charCodeAt(i) << 8) | string.charCodeAt(i + 1))) break;
    return string.length % 2 === 0;
  };

const LONGEST_CODE = 4;

// Whether the bytes from a place on begin with a code of a space.
function isIn(string: string, start: number, { low, high }: CodeSpace): boolean {
  if (start + low.length > string.length) return false;
  for (let i = 0; i < low.length; i++) {
    const byte = string.charCodeAt(start + i);
    if (byte < low.charCodeAt(i) || byte > high.charCodeAt(i)) return false;
  }
  return true;
}

// Real tables have a handful of code spaces.
const MAX_SPACES = 100;

function bySpaces(given: readonly CodeSpace[], budget: Budget): CodeCutter {
  // The shortest code that fits is the one.
  const spaces = given
    .filter(({ low, high }) => low.length === high.length && low.length > 0 && low.length <= LONGEST_CODE)
    .sort((one, other) => one.low.length - other.low.length);
  return (string, take) => {
    spendBytes(budget, string.length, spaces.length + 1);
    for (let at = 0; at < string.length; ) {
      const start = at;
      const space = spaces.find((each) => isIn(string, start, each));
      if (!space) return false;
      at += space.low.length;
      if (!take(codeOf(string.slice(start, at)))) break;
    }
    return true;
  };
}

/** How the strings of a font are cut (ISO 32000-1, 9.7.5 and 9.7.6); null where a table outside the file says so. */
export function codeCutterOf(font: PdfDictionary, { resolve, decode, budget }: PdfFile): CodeCutter | null {
  if (nameOf(resolve(font.get('Subtype'))) !== 'Type0') return bytewise(budget);
  const encoding = resolve(font.get('Encoding'));
  if (isStream(encoding)) {
    const { spaces } = readCodeMap(decode(encoding), budget);
    return spaces.length > 0 && spaces.length <= MAX_SPACES ? bySpaces(spaces, budget) : null;
  }
  return /^Identity-[HV]$/.test(nameOf(encoding)) ? inPairs(budget) : null;
}
