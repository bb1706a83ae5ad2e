/**
 * Characters that a pack can print: the fonts are subset to exactly these (`worker/core/print/fonts/build.ts`), and the
 * release check reports any other character of a record as a finding before layout begins.
 *
 * Ranges are inclusive code points.
 */
export const PRINTABLE_RANGES: readonly (readonly [from: number, to: number])[] = [
  [0x20, 0x7e], // Basic Latin
  [0xa0, 0xac], // Latin-1 signs, up to the soft hyphen, which normalisation removes
  [0xae, 0xff], // Latin-1 signs and letters
  [0x100, 0x17f], // Latin Extended-A: the languages of Europe
  [0x218, 0x21b], // S and T with comma below: Romanian
  [0x2010, 0x2015], // hyphens and dashes
  [0x2018, 0x201e], // quotation marks
  [0x2020, 0x2022], // daggers and bullet
  [0x2026, 0x2026], // ellipsis
  [0x2030, 0x2030], // per mille
  [0x2032, 0x2033], // minutes and seconds of arc
  [0x20ac, 0x20ac], // euro
  [0x2116, 0x2116], // numero
];

/** Signs outside the ranges that engineering text needs, one character each. */
export const PRINTABLE_SIGNS = 'ΔΣΩαβγδθλμπρσφω←↑→↓−√∞≈≠≤≥□▲▼●☐☑✓';

/** Replacements for look-alike characters, so that text copied from a pack is the text that was entered. */
const LOOK_ALIKES: ReadonlyMap<string, string> = new Map([
  ['\u00b5', '\u03bc'], // micro sign: Greek mu
  ['\u2126', '\u03a9'], // ohm sign: Greek capital omega
  ['\u2206', '\u0394'], // increment: Greek capital delta
  ['\u2211', '\u03a3'], // n-ary sum: Greek capital sigma
  ['\u2011', '\u2010'], // no-break hyphen: hyphen
  ['\u202f', '\u00a0'], // narrow no-break space
  ['\u2009', '\u00a0'], // thin space
  ['\u00ad', ''], // soft hyphen
  ['\t', ' '],
  ['\r', ''],
  ['\u200b', ''], // zero-width space
  ['\ufeff', ''], // byte order mark
]);

const LOOK_ALIKE = new RegExp(`[${[...LOOK_ALIKES.keys()].join('')}]`, 'gu');

/**
 * Returns text in its printed form: NFC, and one spelling for each look-alike.
 *
 * @example normaliseText('10\u00b5F')  // '10\u03bcF'
 */
export function normaliseText(text: string): string {
  return text.normalize('NFC').replace(LOOK_ALIKE, (character) => LOOK_ALIKES.get(character) ?? character);
}

const CLASS_OF_RANGES = PRINTABLE_RANGES.map(([from, to]) => `\\u{${from.toString(16)}}-\\u{${to.toString(16)}}`).join(
  '',
);

/** Fast path for nearly every text of a record: no character needs normalisation. */
const PLAIN = /^[\x20-\x7e]*$/;

/** Text whose characters are all printable. */
const PRINTABLE = new RegExp(`^[\\n${CLASS_OF_RANGES}${PRINTABLE_SIGNS}]*$`, 'u');

/**
 * Returns the code point name of a character that cannot be shown.
 *
 * @example codePointName('\u001b')  // 'U+001B'
 */
export function codePointName(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}

/**
 * Returns the printable part of a text, on one line; empty if nothing meaningful is left.
 *
 * @example printableLineOf('Nord \u{1F6E9}\nHangar')  // 'Nord Hangar'
 */
export function printableLineOf(text: string): string {
  const kept = [...normaliseText(text)].map((character) => (PRINTABLE.test(character) ? character : ' ')).join('');
  const line = kept.replace(/\s+/g, ' ').trim();
  return saysSomething(line) ? line : '';
}

/** Whether a text has content: blanks, dots and invisible characters do not count. */
export function saysSomething(text: string | undefined): text is string {
  return text !== undefined && /[\p{L}\p{N}]/u.test(text);
}

/**
 * Returns the distinct characters of a text that no pack can print, in order of appearance.
 *
 * @example unprintableIn('Tank \u{1F600} \u4e2d')  // ['\u{1F600}', '\u4e2d']
 */
export function unprintableIn(text: string): string[] {
  if (PLAIN.test(text) || PRINTABLE.test(text)) return [];
  return [...new Set(normaliseText(text))].filter((character) => !PRINTABLE.test(character));
}
