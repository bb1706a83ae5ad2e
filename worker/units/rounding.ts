import { ENGLISH_FIGURES, type Figures } from '../words/figures.ts';
import { slackOf } from './slack.ts';

/** A true minus sign: a hyphen is lost beside a figure. */
const MINUS = '\u2212';

/**
 * Rounds for print: half away from zero, decided on the shortest decimal that names the number, so that 1.005 gives 1.01.
 *
 * @param decimals 0 to 12
 * @throws RangeError when the value is not finite or the decimals are out of range
 * @source common practice, no source
 * @example roundForPrint(-2.345, 2)  // -2.35
 */
export function roundForPrint(value: number, decimals: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`Cannot round: value must be finite: current value is ${value}`);
  if (!(decimals >= 0 && decimals <= 12)) {
    throw new RangeError(`Cannot round: decimals must be from 0 to 12: current value is ${decimals}`);
  }
  const [mantissa, exponent = '0'] = Math.abs(value).toString().split('e');
  const shifted = Math.round(Number(`${mantissa}e${Number(exponent) + decimals}`));
  const [whole, power = '0'] = shifted.toString().split('e');
  const rounded = Number(`${whole}e${Number(power) - decimals}`);
  return value < 0 && rounded !== 0 ? -rounded : rounded;
}

/** Which way a limit bounds: a least or a greatest value. */
export type Bound = 'least' | 'most';

/**
 * Rounds a limit so that the figure never lies beyond it: a greatest value down, a least value up.
 *
 * @source common practice, no source
 * @example roundWithin(1322.7736, 1, 'most')  // 1322.7
 */
export function roundWithin(value: number, decimals: number, bound: Bound): number {
  const nearest = roundForPrint(value, decimals);
  const step = 10 ** -decimals;
  // What differs by less than binary numbers can tell is the limit itself.
  const beyond = bound === 'most' ? nearest - value : value - nearest;
  if (beyond <= step * 1e-6) return nearest;
  return roundForPrint(bound === 'most' ? nearest - step : nearest + step, decimals);
}

/** As many decimals beyond the usual as ever help to tell two figures apart. */
const MOST_EXTRA = 4;

/**
 * How many decimals it takes to print two figures differently, whatever their signs: the usual ones or some more; the usual
 * ones where no number of decimals does.
 *
 * @example decimalsApart(0.504, 0.5, 2)  // 3
 */
export function decimalsApart(a: number, b: number, usual: number): number {
  const print = (value: number, decimals: number): number => roundForPrint(Math.abs(value), decimals);
  for (let decimals = usual; decimals <= usual + MOST_EXTRA; decimals++)
    if (print(a, decimals) !== print(b, decimals)) return decimals;
  return usual;
}

/**
 * How many decimals it takes to print a figure as it was stated: the usual ones or some more.
 *
 * @example decimalsStated(1640.25, 0)  // 2
 */
export function decimalsStated(value: number, usual: number): number {
  const slack = slackOf(value);
  let decimals = usual;
  while (decimals < usual + MOST_EXTRA && Math.abs(roundForPrint(value, decimals) - value) > slack) decimals++;
  return decimals;
}

/**
 * A number as the pack prints it: fixed decimals, digits in groups, a true minus sign, no negative zero.
 *
 * @example printNumber(-12.5, 0)  // '−13'
 */
export function printNumber(value: number, decimals: number, figures: Figures = ENGLISH_FIGURES): string {
  const rounded = roundForPrint(value, decimals);
  const digits = grouped(Math.abs(rounded).toFixed(decimals), figures);
  return rounded < 0 ? MINUS + digits : digits;
}

/** Groups of three before the decimal sign, where a language has them. */
function grouped(digits: string, { decimalSign, groupSign, groupedFrom }: Figures): string {
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
export function printAsIs(value: number, most: number, { decimalSign }: Figures = ENGLISH_FIGURES): string {
  return String(Number(value.toFixed(most)))
    .replace('-', MINUS)
    .replace('.', decimalSign);
}

/**
 * A number with its sign always shown, for changes.
 *
 * @example printSigned(3, 1)  // '+3.0'
 */
export function printSigned(value: number, decimals: number, figures: Figures = ENGLISH_FIGURES): string {
  const printed = printNumber(value, decimals, figures);
  return roundForPrint(value, decimals) > 0 ? `+${printed}` : printed;
}
