const BITS = 24;
const HIGHEST = 2 ** BITS - 1;

/** The three notations of a 24-bit aircraft address. */
export interface AddressForms {
  hexadecimal: string;
  octal: string;
  binary: string;
}

/**
 * Parses an aircraft address: 6 hexadecimal, 8 octal or 24 binary digits, distinguished by their number. Spaces and
 * hyphens are ignored.
 *
 * @returns undefined for anything else
 * @source positional notation of numbers
 * @example parseAddress('52746757')  // 0xABCDEF
 */
export function parseAddress(text: string): number | undefined {
  const digits = text.replace(/[\s-]/g, '').toUpperCase();
  if (/^[0-9A-F]{6}$/.test(digits)) return Number.parseInt(digits, 16);
  if (/^[0-7]{8}$/.test(digits)) return Number.parseInt(digits, 8);
  if (/^[01]{24}$/.test(digits)) return Number.parseInt(digits, 2);
  return undefined;
}

/**
 * Returns all three forms of an address.
 *
 * @source positional notation of numbers
 */
export function addressForms(address: number): AddressForms {
  const digits = (base: number, length: number): string => address.toString(base).toUpperCase().padStart(length, '0');
  return { hexadecimal: digits(16, 6), octal: digits(8, 8), binary: digits(2, BITS) };
}

/** Whether an address is all zeros or all ones, which no aircraft ever has (ICAO Annex 10, Vol. III, ch. 9; from memory). */
export function isReserved(address: number): boolean {
  return address === 0 || address === HIGHEST;
}
