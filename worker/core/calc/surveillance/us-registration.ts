/** United States registrations and their addresses follow from each other by counting. */
const FIRST = 0xa00001;
const LAST = 0xadf7c7;
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';
/** Suffixes of zero, one or two letters: 1 + 24 · 25. */
const SUFFIXES = 1 + LETTERS.length * (LETTERS.length + 1);
/** Addresses under each leading digit, from the first digit to the fourth. */
const UNDER = [101_711, 10_111, 951, 35] as const;

/**
 * Returns the registration of a United States aircraft address.
 *
 * @returns undefined outside A00001 to ADF7C7
 * @source counting rule and pairs: github.com/guillaumemichel/icao-nnumber_converter at ce28a807
 * @example usRegistration(0xabcdef)  // 'N86QU'
 */
export function usRegistration(address: number): string | undefined {
  if (address < FIRST || address > LAST) return undefined;
  let rest = address - FIRST;
  let text = 'N';
  for (const [index, under] of UNDER.entries()) {
    text += String(Math.floor(rest / under) + (index === 0 ? 1 : 0));
    rest %= under;
    const suffixes = index === 3 ? LETTERS.length + 1 : SUFFIXES;
    if (rest < suffixes) return text + (index === 3 ? (rest === 0 ? '' : LETTERS[rest - 1]) : suffix(rest));
    rest -= suffixes;
  }
  return text + String(rest);
}

/** Returns the suffix at an index: empty, `A`, `AA` … `AZ`, `B` …. */
function suffix(place: number): string {
  if (place === 0) return '';
  const perLetter = LETTERS.length + 1;
  const first = LETTERS[Math.floor((place - 1) / perLetter)] ?? '';
  const second = (place - 1) % perLetter;
  return second === 0 ? first : first + (LETTERS[second - 1] ?? '');
}
