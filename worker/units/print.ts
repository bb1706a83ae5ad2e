import { ENGLISH_LEXICON, type Lexicon } from '../words/lexicon.ts';
import { type Words, wordsOf } from '../words/words.ts';
import { printDate, printMoment } from './calendar.ts';
import { factorOf, otherUnits, type Quantity, type Units, unitOf } from './quantity.ts';
import { printAsIs, printNumber, printSigned, roundWithin } from './rounding.ts';

/** How many decimals each quantity is printed with, by the unit it is printed in: about a tenth of what a shop can measure. */
const DECIMALS: Record<string, number> = {
  kg: 1,
  lb: 1,
  mm: 0,
  cm: 1,
  m: 3,
  in: 2,
  l: 1,
  'US gal': 1,
  'imp gal': 1,
  kg·mm: 0,
  kg·cm: 0,
  kg·m: 2,
  kg·in: 1,
  lb·mm: 0,
  lb·cm: 0,
  lb·m: 2,
  lb·in: 1,
};

/** Densities and flows, whose unit has a stroke in it. */
const RATIO_DECIMALS = { density: 3, flow: 1 } as const;

function decimalsOf(quantity: Quantity, units: Units): number {
  if (quantity === 'density' || quantity === 'flow') return RATIO_DECIMALS[quantity];
  return DECIMALS[unitOf(quantity, units)] ?? 1;
}

export interface PrintOptions {
  /** Decimals beyond the usual. @default 0 */
  extra?: number;
  /** Always show the sign. @default false */
  signed?: boolean;
}

/** Prints values of calculation (kg, mm, l) in the units and the language of one record. Rounding happens here and nowhere before. */
export interface Printer {
  units: Units;
  lexicon: Lexicon;
  /** A sentence of ours, as a tagged template. */
  words: Words;
  /** A text of ours that is kept as data, such as a choice of the schema; in a document of this name, where it means something else there. */
  term(text: string, document?: string): string;
  /** The number alone, for a column whose head carries the unit. */
  number(quantity: Quantity, value: number, options?: PrintOptions): string;
  /** The number with its unit, joined by a no-break space. */
  measure(quantity: Quantity, value: number, options?: PrintOptions): string;
  /** The same measure in the other system of units; a limit is rounded so that it never lies beyond itself. */
  other(quantity: Quantity, value: number, bound?: 'least' | 'most'): string;
  unit(quantity: Quantity): string;
  /** A number in a unit that every record shares. */
  plain(value: number, decimals: number): string;
  /** The same with its sign always shown. */
  signed(value: number, decimals: number): string;
  /** A number with the digits that it has; at most so many decimals, 12 unless told. */
  asIs(value: number, most?: number): string;
  date(date: string): string;
  moment(moment: string): string;
}

/**
 * A printer for the units a record declares.
 *
 * @param lexicon the language of the record
 * @example printerFor({ mass: 'lb', arm: 'in', volume: 'usgal' }).measure('arm', 254)  // '10.00 in'
 */
export function printerFor(units: Units, lexicon: Lexicon = ENGLISH_LEXICON): Printer {
  const { figures } = lexicon;
  const number = (quantity: Quantity, value: number, { extra = 0, signed = false }: PrintOptions = {}): string => {
    const print = signed ? printSigned : printNumber;
    return print(value / factorOf(quantity, units), decimalsOf(quantity, units) + extra, figures);
  };
  return {
    units,
    lexicon,
    words: wordsOf(lexicon),
    term: (text, document) => lexicon.find(text, document),
    number,
    measure: (quantity, value, options) => `${number(quantity, value, options)}\u00a0${unitOf(quantity, units)}`,
    other: (quantity, value, bound) => inOtherUnits(lexicon, otherUnits(units), { quantity, value, bound }),
    unit: (quantity) => unitOf(quantity, units),
    plain: (value, decimals) => printNumber(value, decimals, figures),
    signed: (value, decimals) => printSigned(value, decimals, figures),
    asIs: (value, most = 12) => printAsIs(value, most, figures),
    date: (date) => printDate(date, figures),
    moment: (moment) => printMoment(moment, figures),
  };
}

interface Other {
  quantity: Quantity;
  value: number;
  bound: 'least' | 'most' | undefined;
}

function inOtherUnits({ figures }: Lexicon, units: Units, { quantity, value, bound }: Other): string {
  const decimals = decimalsOf(quantity, units);
  const converted = value / factorOf(quantity, units);
  const rounded = bound ? roundWithin(converted, decimals, bound) : converted;
  return `${printNumber(rounded, decimals, figures)}\u00a0${unitOf(quantity, units)}`;
}
