import type { WireEnd } from '../../record/visit.ts';

/**
 * Where a wire ends, as a drawing has it.
 *
 * @example wireEnd({ at: 'J101', pin: '3' })  // 'J101-3'
 */
export function wireEnd({ at, pin }: WireEnd): string {
  return pin === undefined ? at : `${at}-${pin}`;
}
