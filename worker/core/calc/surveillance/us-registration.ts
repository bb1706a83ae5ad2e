/** United States registrations and their addresses follow from each other by counting. */
const FIRST = 0xa00001;
const LAST = 0xadf7c7;
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';
/** Suffixes of zero, one or two letters: 1 + 24 · 25. */
const SUFFIXES = 1 + LETTERS.length * (LETTERS.length + 1);
/** Digits and letters that follow the N; source as usRegistration(). */
const MAX_SIGNS = 5;
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
    const suffixes = suffixesAfter(index);
    if (rest < suffixes) return text + (suffixes === SUFFIXES ? suffix(rest) : (LETTERS[rest - 1] ?? ''));
    rest -= suffixes;
  }
  return text + String(rest);
}

/** Returns the number of suffixes behind the digit at an index: behind the fourth there is room for one letter. */
function suffixesAfter(index: number): number {
  return index === MAX_SIGNS - 2 ? LETTERS.length + 1 : SUFFIXES;
}

/** Returns the suffix at an index: empty, `A`, `AA` … `AZ`, `B` …. */
function suffix(place: number): string {
  if (place === 0) return '';
  const perLetter = LETTERS.length + 1;
  const first = LETTERS[Math.floor((place - 1) / perLetter)] ?? '';
  const second = (place - 1) % perLetter;
  return second === 0 ? first : first + (LETTERS[second - 1] ?? '');
}

/**
 * Returns the address of a United States registration, by the same count.
 *
 * @returns undefined for anything else
 * @source as usRegistration()
 * @example usAddress('N86QU')  // 0xabcdef
 */
export function usAddress(registration: string): number | undefined {
  const [, digits = '', letters = ''] = /^N([1-9]\d{0,4})([A-HJ-NP-Z]{0,2})$/.exec(registration) ?? [];
  if (digits === '' || digits.length + letters.length > MAX_SIGNS) return undefined;
  let address = FIRST;
  for (const [index, digit] of [...digits].map(Number).entries()) {
    const under = UNDER[index] ?? 1;
    address += index === 0 ? (digit - 1) * under : suffixesAfter(index - 1) + digit * under;
  }
  return address + placeOfSuffix(letters, digits.length - 1);
}

/** Returns the place of a suffix behind the digit at an index: no second letter follows the fourth digit. */
function placeOfSuffix([first, second]: string, index: number): number {
  if (first === undefined) return 0;
  const perLetter = suffixesAfter(index) === SUFFIXES ? LETTERS.length + 1 : 1;
  const ofSecond = second === undefined ? 0 : LETTERS.indexOf(second) + 1;
  return 1 + LETTERS.indexOf(first) * perLetter + ofSecond;
}
