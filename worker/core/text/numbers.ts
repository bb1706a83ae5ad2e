import { roundForPrint } from '../units/rounding.ts';
import { FORMATS } from './generated/languages.ts';
import type { NumberFormat } from './number-format.ts';

/** A true minus sign: a hyphen is lost beside a figure. */
const MINUS = '\u2212';

/**
 * A number as the pack prints it: fixed decimals, digits in groups, a true minus sign, no negative zero.
 *
 * @example printNumber(-12.5, 0)  // '−13'
 */
export function printNumber(value: number, decimals: number, format: NumberFormat = FORMATS.en): string {
  const rounded = roundForPrint(value, decimals);
  const digits = grouped(Math.abs(rounded).toFixed(decimals), format);
  return rounded < 0 ? MINUS + digits : digits;
}

/** Groups of three before the decimal sign, where a language has them. */
function grouped(digits: string, { decimalSign, groupSign, groupedFrom }: NumberFormat): string {
  const [whole = '', fraction] = digits.split('.');
  const spaced = whole.length < groupedFrom ? whole : whole.replace(/\B(?=(\d{3})+$)/g, groupSign);
  return fraction === undefined ? spaced : `${spaced}${decimalSign}${fraction}`;
}

/**
 * A number with the digits that it has and no more, as an instrument or a paper states it.
 *
 * @param most decimals that are kept
 * @example printAsIs(-1013.25, 3)  // '−1013.25'
 */
export function printAsIs(value: number, most: number, { decimalSign }: NumberFormat = FORMATS.en): string {
  return String(Number(value.toFixed(most)))
    .replace('-', MINUS)
    .replace('.', decimalSign);
}

/**
 * A number with its sign always shown, for changes.
 *
 * @example printSigned(3, 1)  // '+3.0'
 */
export function printSigned(value: number, decimals: number, format: NumberFormat = FORMATS.en): string {
  const printed = printNumber(value, decimals, format);
  return roundForPrint(value, decimals) > 0 ? `+${printed}` : printed;
}
