import { dateOf, inZoneOf } from '../units/calendar.ts';
import { factorOf, otherUnits, type Quantity, type Units, unitOf } from '../units/quantity.ts';
import { type Bound, decimalsApart, decimalsStated, roundForPrint, roundWithin } from '../units/rounding.ts';
import { slackOf } from '../units/slack.ts';
import { ENGLISH_LEXICON, type Lexicon } from '../words/lexicon.ts';
import { type Words, wordsOf } from '../words/words.ts';
import { printDate, printMoment } from './dates.ts';
import { printAsIs, printNumber, printSigned } from './numbers.ts';

export type { Bound } from '../units/rounding.ts';

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
  /** Of a limit, which way it bounds: it is then rounded so that the figure never lies beyond it. @default to the nearest */
  bound?: Bound | undefined;
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
  /** The number alone as it was stated: with more than the usual decimals where it has them. */
  stated(quantity: Quantity, value: number): string;
  /** The number with its unit, joined by a no-break space. */
  measure(quantity: Quantity, value: number, options?: PrintOptions): string;
  /**
   * Which way to round a figure that lies within limits, so that print does not carry it beyond what is printed of them; undefined where
   * the nearest figure is within, or where the figure itself lies beyond.
   */
  inward(quantity: Quantity, value: number, limits: { least?: number; most?: number }): Bound | undefined;
  /** The same measure in the other system of units; of a limit, the figure printed in the own system, rounded inward once more. */
  other(quantity: Quantity, value: number, bound?: Bound): string;
  /** A measure and the limit that it breaks, with as many digits as show that it does. */
  apart(
    quantity: Quantity,
    value: number,
    limit: number,
    options?: Pick<PrintOptions, 'signed'>,
  ): [value: string, limit: string];
  unit(quantity: Quantity): string;
  /** A number in a unit that every record shares; a limit is rounded inward. */
  plain(value: number, decimals: number, bound?: Bound): string;
  /** A number and the limit that it breaks, with as many digits as show that it does. */
  plainApart(
    value: number,
    limit: number,
    decimals: number,
    options?: Pick<PrintOptions, 'signed'>,
  ): [value: string, limit: string];
  /** The same with its sign always shown. */
  signed(value: number, decimals: number): string;
  /** A number with the digits that it has; at most so many decimals, 12 unless told; a limit is rounded inward to them. */
  asIs(value: number, most?: number, bound?: Bound): string;
  date(date: string): string;
  /** A moment in the zone of the record. */
  moment(moment: string): string;
  /** The day of a moment in the zone of the record. */
  day(moment: string): string;
  /** A moment as ISO text, written in the zone of the record. */
  local(moment: string): string;
}

/**
 * A printer for the units a record declares.
 *
 * @param lexicon the language of the record
 * @param zone a moment with the offset in which all others are printed; without it each stands in its own
 * @example printerFor({ mass: 'lb', arm: 'in', volume: 'usgal' }).measure('arm', 254)  // '10.00 in'
 */
export function printerFor(units: Units, lexicon: Lexicon = ENGLISH_LEXICON, zone?: string): Printer {
  const { figures } = lexicon;
  const local = (moment: string): string => (zone === undefined ? moment : inZoneOf(zone, moment));
  const number = (
    quantity: Quantity,
    value: number,
    { extra = 0, signed = false, bound }: PrintOptions = {},
  ): string => {
    const print = signed ? printSigned : printNumber;
    const decimals = decimalsOf(quantity, units) + extra;
    return print(rounded(value / factorOf(quantity, units), decimals, bound), decimals, figures);
  };
  const measure: Printer['measure'] = (quantity, value, options) =>
    `${number(quantity, value, options)}\u00a0${unitOf(quantity, units)}`;
  return {
    units,
    lexicon,
    words: wordsOf(lexicon),
    term: (text, document) => lexicon.find(text, document),
    number,
    stated: (quantity, value) => {
      const [converted, usual] = [value / factorOf(quantity, units), decimalsOf(quantity, units)];
      return printNumber(converted, decimalsStated(converted, usual), figures);
    },
    measure,
    inward: (quantity, value, { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY }) => {
      const [factor, decimals] = [factorOf(quantity, units), decimalsOf(quantity, units)];
      const nearest = roundForPrint(value / factor, decimals);
      const slack = slackOf(value);
      const isWithin = value >= least - slack && value <= most + slack;
      if (!isWithin) return undefined;
      if (Number.isFinite(most) && nearest > roundWithin(most / factor, decimals, 'most')) return 'most';
      return Number.isFinite(least) && nearest < roundWithin(least / factor, decimals, 'least') ? 'least' : undefined;
    },
    other: (quantity, value, bound) => inOtherUnits(lexicon, units, { quantity, value, bound }),
    apart: (quantity, value, limit, options) => {
      const [factor, usual] = [factorOf(quantity, units), decimalsOf(quantity, units)];
      const extra = decimalsApart(value / factor, limit / factor, usual) - usual;
      return [measure(quantity, value, { extra, ...options }), measure(quantity, limit, { extra })];
    },
    unit: (quantity) => unitOf(quantity, units),
    plain: (value, decimals, bound) => printNumber(rounded(value, decimals, bound), decimals, figures),
    plainApart: (value, limit, usual, { signed = false } = {}) => {
      const decimals = decimalsApart(value, limit, usual);
      return [(signed ? printSigned : printNumber)(value, decimals, figures), printNumber(limit, decimals, figures)];
    },
    signed: (value, decimals) => printSigned(value, decimals, figures),
    asIs: (value, most = 12, bound) => printAsIs(rounded(value, most, bound), most, figures),
    date: (date) => printDate(date, figures),
    moment: (moment) => printMoment(local(moment), figures),
    day: (moment) => printDate(dateOf(local(moment)), figures),
    local,
  };
}

/** A limit rounded inward; anything else is left to the printing. */
function rounded(value: number, decimals: number, bound: Bound | undefined): number {
  return bound ? roundWithin(value, decimals, bound) : value;
}

interface Other {
  quantity: Quantity;
  value: number;
  bound: Bound | undefined;
}

/** A limit is converted as it is printed in its own unit, so that the two figures say the same. */
function inOtherUnits({ figures }: Lexicon, units: Units, { quantity, value, bound }: Other): string {
  const [own, other] = [factorOf(quantity, units), otherUnits(units)];
  const decimals = decimalsOf(quantity, other);
  const converted = (rounded(value / own, decimalsOf(quantity, units), bound) * own) / factorOf(quantity, other);
  return `${printNumber(rounded(converted, decimals, bound), decimals, figures)}\u00a0${unitOf(quantity, other)}`;
}
