import type { Omission } from '../calc/surveillance/altimeter.ts';
import type { Printer } from '../units/print.ts';

/**
 * What a test leaves out, in words.
 *
 * @example omissionText({ what: 'friction', at: [1000, 2000], unit: 'ft' }, say)  // 'friction at 1000, 2000 ft'
 */
export function omissionText({ what, at, unit }: Omission, say: Printer): string {
  return at.length === 0
    ? say.term(what)
    : say.words`${say.term(what)} at ${at.map((value) => say.plain(value, 0)).join(', ')} ${unit}`;
}
