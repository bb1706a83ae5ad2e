import type { WireEnd } from '../../record/visit.ts';

/**
 * Returns a wire end in the notation of a drawing.
 *
 * @example wireEnd({ at: 'J101', pin: '3' })  // 'J101-3'
 */
export function wireEnd({ at, pin }: WireEnd): string {
  return pin === undefined ? at : `${at}-${pin}`;
}
