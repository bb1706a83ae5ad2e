import type { Quantity } from '../units/quantity.ts';
import type { Bound } from '../units/rounding.ts';

export interface FigureOptions {
  /** Extra decimals. @default 0 */
  extra?: number;
  /** Always shows the sign. @default false */
  signed?: boolean;
  /** Direction of a limit: it is rounded so that the printed figure never lies beyond it. @default to the nearest */
  bound?: Bound | undefined;
  /** Limits that the printed figure does not exceed if the value lies within them. */
  within?: { least?: number; most?: number };
}

/** Options of a maximum and of a minimum: rounded inward. */
export const MAX = { bound: 'most' } as const;
export const MIN = { bound: 'least' } as const;

/** Formats of a figure, each with its arguments; values are in kg, mm and l. */
export interface FigureArguments {
  measure: [quantity: Quantity, value: number, options?: FigureOptions];
  number: [quantity: Quantity, value: number, options?: FigureOptions];
  stated: [quantity: Quantity, value: number];
  other: [quantity: Quantity, value: number, bound?: Bound];
  unit: [quantity: Quantity];
  plain: [value: number, decimals: number, bound?: Bound];
  /** Without decimals as stated, with min. one. */
  signed: [value: number, decimals?: number];
  asIs: [value: number, most?: number, bound?: Bound];
  date: [date: string];
  timestamp: [moment: string];
  day: [moment: string];
  local: [moment: string];
}

/** A figure, printed in the units, the language and the time zone of the reader. */
export type Figure =
  | {
      [Way in keyof FigureArguments]: { readonly print: Way; readonly of: FigureArguments[Way] };
    }[keyof FigureArguments]
  | Apart;

/** A figure or the limit that it exceeds, printed with enough digits to show that it does. */
export interface Apart {
  readonly print: 'apart';
  readonly quantity: Quantity | { decimals: number };
  readonly pair: readonly [value: number, limit: number];
  /** Extra decimals even where the usual ones suffice. */
  readonly extra: number;
  readonly which: 0 | 1;
  readonly signed: boolean;
}

const printing =
  <Way extends keyof FigureArguments>(print: Way) =>
  (...of: FigureArguments[Way]): Figure =>
    ({ print, of }) as Figure;

export const measure = printing('measure');
export const number = printing('number');
export const stated = printing('stated');
export const other = printing('other');
export const unit = printing('unit');
export const plain = printing('plain');
export const signed = printing('signed');
export const asIs = printing('asIs');
export const date = printing('date');
export const timestamp = printing('timestamp');
export const day = printing('day');
export const local = printing('local');

/** Returns a measure and the limit that it exceeds. */
export function apart(
  quantity: Quantity,
  value: number,
  limit: number,
  { signed: isSigned = false, extra = 0 }: Pick<FigureOptions, 'signed' | 'extra'> = {},
): [value: Figure, limit: Figure] {
  return pairOf({ quantity, pair: [value, limit], signed: isSigned, extra });
}

/** Returns a number in a unit that every record shares, and the limit that it exceeds. */
export function plainApart(
  value: number,
  limit: number,
  decimals: number,
  { signed: isSigned = false }: Pick<FigureOptions, 'signed'> = {},
): [value: Figure, limit: Figure] {
  return pairOf({ quantity: { decimals }, pair: [value, limit], signed: isSigned, extra: 0 });
}

function pairOf(of: Omit<Apart, 'print' | 'which'>): [value: Figure, limit: Figure] {
  return [
    { print: 'apart', ...of, which: 0 },
    { print: 'apart', ...of, which: 1 },
  ];
}
