import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import type { Quantity } from '../../units/quantity.ts';

/** A measure in the units of the record, with the other system in small print. */
export interface BothSystems {
  readonly [name: string]: string;
  value: string;
  /** Empty without a conversion. */
  other: string;
}

/**
 * Returns a figure on which a reader acts.
 *
 * @param bound direction of a limit, so that neither figure lies beyond it
 */
export function bothSystems(
  fmt: Formatter,
  quantity: Quantity,
  value: number | undefined,
  { bound, extra = 0 }: { bound?: 'least' | 'most'; extra?: number } = {},
): BothSystems {
  if (value === undefined) return { value: DASH, other: '' };
  return { value: fmt.measure(quantity, value, { extra, bound }), other: fmt.other(quantity, value, bound) };
}

/** Returns both in running text, without small print. */
export function inBrackets({ value, other }: BothSystems): string {
  return other === '' ? value : `${value} (${other})`;
}
