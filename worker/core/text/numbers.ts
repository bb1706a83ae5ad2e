import { roundForPrint } from '../units/rounding.ts';
import { FORMATS } from './generated/languages.ts';
import type { NumberFormat } from './number-format.ts';

/** A true minus sign: a hyphen next to a figure is overlooked. */
const MINUS = '\u2212';

/**
 * Formats a number for the pack: fixed decimals, digits in groups, a true minus sign, no negative zero.
 *
 * @example printNumber(-12.5, 0)  // '−13'
 */
export function printNumber(value: number, decimals: number, format: NumberFormat = FORMATS.en): string {
  const rounded = roundForPrint(value, decimals);
  const digits = grouped(Math.abs(rounded).toFixed(decimals), format);
  return rounded < 0 ? MINUS + digits : digits;
}

/** Groups the digits before the decimal sign by threes, if the language does so. */
function grouped(digits: string, { decimalSign, groupSign, groupedFrom }: NumberFormat): string {
  const [whole = '', fraction] = digits.split('.');
  const spaced = whole.length < groupedFrom ? whole : whole.replace(/\B(?=(\d{3})+$)/g, groupSign);
  return fraction === undefined ? spaced : `${spaced}${decimalSign}${fraction}`;
}

/**
 * Formats a number with its own digits only, as an instrument or a document states it.
 *
 * @param most max. decimals
 * @example printAsIs(-1013.25, 3)  // '−1013.25'
 */
export function printAsIs(value: number, most: number, { decimalSign }: NumberFormat = FORMATS.en): string {
  return String(Number(value.toFixed(most)))
    .replace('-', MINUS)
    .replace('.', decimalSign);
}

/**
 * Formats a change, always with its sign.
 *
 * @example printSigned(3, 1)  // '+3.0'
 */
export function printSigned(value: number, decimals: number, format: NumberFormat = FORMATS.en): string {
  const printed = printNumber(value, decimals, format);
  return roundForPrint(value, decimals) > 0 ? `+${printed}` : printed;
}
