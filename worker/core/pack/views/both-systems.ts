import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import type { Quantity } from '../../units/quantity.ts';

/** A measure in the units of the record, with the other system in small. */
export interface BothSystems {
  readonly [name: string]: string;
  value: string;
  /** Empty where there is nothing to convert. */
  other: string;
}

/**
 * A figure that a reader acts on.
 *
 * @param bound for a limit: which way it bounds, so that neither figure lies beyond it
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

/** Both in a run of text, where nothing can stand in small. */
export function inBrackets({ value, other }: BothSystems): string {
  return other === '' ? value : `${value} (${other})`;
}
