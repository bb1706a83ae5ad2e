import type { Omission } from '../calc/surveillance/altimeter.ts';
import { printNumber } from '../units/rounding.ts';

/**
 * What a test leaves out, in words.
 *
 * @example omissionText({ what: 'friction', at: [1000, 2000], unit: 'ft' })  // 'friction at 1000, 2000 ft'
 */
export function omissionText({ what, at, unit }: Omission): string {
  return at.length === 0 ? what : `${what} at ${at.map((value) => printNumber(value, 0)).join(', ')} ${unit}`;
}
