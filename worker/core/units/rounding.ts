import { slackOf } from './slack.ts';

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
  if (!Number.isFinite(shifted)) return value;
  const [whole, power = '0'] = shifted.toString().split('e');
  const rounded = Number(`${whole}e${Number(power) - decimals}`);
  return value < 0 && rounded !== 0 ? -rounded : rounded;
}

/** Direction of a limit: `least` for a minimum, `most` for a maximum. */
export type Bound = 'least' | 'most';

/**
 * Rounds a limit inward: a maximum down, a minimum up.
 *
 * @source common practice, no source
 * @example roundWithin(1322.7736, 1, 'most')  // 1322.7
 */
export function roundWithin(value: number, decimals: number, bound: Bound): number {
  const nearest = roundForPrint(value, decimals);
  const step = 10 ** -decimals;
  // A difference within binary rounding error counts as equal to the limit.
  const beyond = bound === 'most' ? nearest - value : value - nearest;
  if (beyond <= step * 1e-6) return nearest;
  return roundForPrint(bound === 'most' ? nearest - step : nearest + step, decimals);
}

/** Max. decimals of a printed figure: our choice. */
const MAX_DECIMALS = 12;

/**
 * Returns the decimals that print two figures differently, independent of their signs: the usual ones or more; the usual ones
 * if the figures are equal to the last of twelve decimals.
 *
 * @example decimalsApart(0.504, 0.5, 2)  // 3
 */
export function decimalsApart(a: number, b: number, usual: number): number {
  const print = (value: number, decimals: number): number => roundForPrint(Math.abs(value), decimals);
  for (let decimals = usual; decimals <= MAX_DECIMALS; decimals++)
    if (print(a, decimals) !== print(b, decimals)) return decimals;
  return usual;
}

/** Max. extra decimals of a figure as stated. */
const MAX_EXTRA = 4;

/**
 * Returns the decimals of a figure as stated: the usual ones or more.
 *
 * @example decimalsStated(1640.25, 0)  // 2
 */
export function decimalsStated(value: number, usual: number): number {
  const slack = slackOf(value);
  let decimals = usual;
  while (decimals < usual + MAX_EXTRA && Math.abs(roundForPrint(value, decimals) - value) > slack) decimals++;
  return decimals;
}
