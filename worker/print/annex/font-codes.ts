import { type CodeSpace, codeOf, readCodeMap } from './code-map.ts';
import type { PdfFile } from './pdf-file.ts';
import { isStream, nameOf, type PdfDictionary } from './pdf-object.ts';

/** Cuts a shown string into the codes of a font, and gives each to `take`; false where some of it is no code. */
export type CodeCutter = (string: string, take: (code: number) => void) => boolean;

const bytewise: CodeCutter = (string, take) => {
  for (let i = 0; i < string.length; i++) take(string.charCodeAt(i));
  return true;
};

const inPairs: CodeCutter = (string, take) => {
  for (let i = 0; i + 1 < string.length; i += 2) take((string.charCodeAt(i) << 8) | string.charCodeAt(i + 1));
  return string.length % 2 === 0;
};

const LONGEST_CODE = 4;

function isIn(bytes: string, { low, high }: CodeSpace): boolean {
  if (bytes.length !== low.length || bytes.length !== high.length) return false;
  for (let i = 0; i < bytes.length; i++)
    if (bytes.charCodeAt(i) < low.charCodeAt(i) || bytes.charCodeAt(i) > high.charCodeAt(i)) return false;
  return true;
}

// Real tables have a handful of code spaces.
const MOST_SPACES = 100;

const bySpaces =
  (spaces: readonly CodeSpace[]): CodeCutter =>
  (string, take) => {
    for (let at = 0; at < string.length; ) {
      const start = at;
      for (let length = 1; length <= LONGEST_CODE && start + length <= string.length; length++) {
        const bytes = string.slice(start, start + length);
        if (!spaces.some((space) => isIn(bytes, space))) continue;
        take(codeOf(bytes));
        at = start + length;
        break;
      }
      if (at === start) return false;
    }
    return true;
  };

/** How the strings of a font are cut (ISO 32000-1, 9.7.5 and 9.7.6); null where a table outside the file says so. */
export function codeCutterOf(font: PdfDictionary, { resolve, decode, budget }: PdfFile): CodeCutter | null {
  if (nameOf(resolve(font.get('Subtype'))) !== 'Type0') return bytewise;
  const encoding = resolve(font.get('Encoding'));
  if (isStream(encoding)) {
    const { spaces } = readCodeMap(decode(encoding), budget);
    return spaces.length > 0 && spaces.length <= MOST_SPACES ? bySpaces(spaces) : null;
  }
  return /^Identity-[HV]$/.test(nameOf(encoding)) ? inPairs : null;
}
