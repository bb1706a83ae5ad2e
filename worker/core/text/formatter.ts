import { dateOf, inZoneOf } from '../units/calendar.ts';
import { factorOf, otherUnits, type Quantity, type Units, unitOf } from '../units/quantity.ts';
import { type Bound, decimalsApart, decimalsStated, roundForPrint, roundWithin } from '../units/rounding.ts';
import { slackOf } from '../units/slack.ts';
import { printDate, printTimestamp } from './dates.ts';
import type { Apart, Figure, FigureArguments, FigureOptions } from './figure.ts';
import { ENGLISH, type Locale } from './locale.ts';
import { type Filling, type Message, said, type Value } from './message.ts';
import type { NumberFormat } from './number-format.ts';
import { printAsIs, printNumber, printSigned } from './numbers.ts';
import { termOf } from './terms.ts';

export type { Bound } from '../units/rounding.ts';

/** Printed decimals of each quantity, by its printed unit: about a tenth of what a workshop can measure. */
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

/** Densities and flows, whose unit contains a slash. */
const RATIO_DECIMALS = { density: 3, flow: 1 } as const;

function decimalsOf(quantity: Quantity, units: Units): number {
  if (quantity === 'density' || quantity === 'flow') return RATIO_DECIMALS[quantity];
  return DECIMALS[unitOf(quantity, units)] ?? 1;
}

/** Formats one figure in each way, in the units and the language of one record. Values are rounded here and nowhere before. */
export type FigureFormats = {
  [Way in keyof FigureArguments]: (...of: FigureArguments[Way]) => string;
};

/** Formats values in calculation units (kg, mm, l) and messages in the units and the language of one record. */
export interface Formatter extends FigureFormats {
  units: Units;
  locale: Locale;
  /** Returns the text of a message. */
  text<Values extends object>(message: Message<Values>, ...filling: Filling<Values>): string;
  /** Returns the text of any value of a message. */
  value(value: Value): string;
  /**
   * Returns the term for a value of the record or of a result, such as a choice of the schema; a document may have a
   * different term for it.
   */
  term(value: string, document?: string): string;
  /**
   * Returns the direction in which to round a figure that lies within limits, so that print does not carry it beyond
   * the printed limits; undefined if the nearest figure is within, or if the figure itself lies beyond.
   */
  inward(quantity: Quantity, value: number, limits: { least?: number; most?: number }): Bound | undefined;
  /** Returns a measure and the limit that it exceeds, with enough digits to show that it does. */
  apart(
    quantity: Quantity,
    value: number,
    limit: number,
    options?: Pick<FigureOptions, 'signed'>,
  ): [value: string, limit: string];
  /** Returns a number and the limit that it exceeds, with enough digits to show that it does. */
  plainApart(
    value: number,
    limit: number,
    decimals: number,
    options?: Pick<FigureOptions, 'signed'>,
  ): [value: string, limit: string];
}

/**
 * Returns a formatter for the units that a record declares.
 *
 * @param locale the language of the record
 * @param zone a timestamp with the offset in which all others are printed (default: each in its own)
 * @example formatterFor({ mass: 'lb', arm: 'in', volume: 'usgal' }).measure('arm', 254)  // '10.00 in'
 */
export function formatterFor(units: Units, locale: Locale = ENGLISH, zone?: string): Formatter {
  const figures = figuresIn(units, locale, zone);
  const value = (of: Value): string => {
    if (typeof of === 'string') return of;
    if (typeof of === 'number') return figures.asIs(of);
    if ('items' in of) return of.items.map(value).join(value(of.between));
    return 'print' in of ? figureText(of, figures, units) : locale.render(of, value);
  };
  const both = (quantity: Apart['quantity'], of: Apart['pair'], { signed = false } = {}): [string, string] => {
    const text = (which: Apart['which']): string =>
      figureText({ print: 'apart', quantity, pair: of, which, signed, extra: 0 }, figures, units);
    return [text(0), text(1)];
  };
  return {
    ...figures,
    units,
    locale,
    text: (message, ...filling) => locale.render(said(message, ...filling), value),
    value,
    term: (term, document) => value(termOf(term, document)),
    inward: (quantity, of, limits) => inwardOf(units, quantity, of, limits),
    apart: (quantity, of, limit, options) => both(quantity, [of, limit], options),
    plainApart: (of, limit, decimals, options) => both({ decimals }, [of, limit], options),
  };
}

function figuresIn(units: Units, { format }: Locale, zone: string | undefined): FigureFormats {
  const local = (moment: string): string => (zone === undefined ? moment : inZoneOf(zone, moment));
  const number: FigureFormats['number'] = (quantity, value, { extra = 0, signed = false, bound, within } = {}) => {
    const decimals = decimalsOf(quantity, units) + extra;
    const inward = bound ?? (within && inwardOf(units, quantity, value, within));
    const print = signed ? printSigned : printNumber;
    return print(rounded(value / factorOf(quantity, units), decimals, inward), decimals, format);
  };
  return {
    number,
    measure: (quantity, value, options) => `${number(quantity, value, options)}\u00a0${unitOf(quantity, units)}`,
    stated: (quantity, value) => {
      const [converted, usual] = [value / factorOf(quantity, units), decimalsOf(quantity, units)];
      return printNumber(converted, decimalsStated(converted, usual), format);
    },
    other: (quantity, value, bound) => inOtherUnits(format, units, { quantity, value, bound }),
    unit: (quantity) => unitOf(quantity, units),
    plain: (value, decimals, bound) => printNumber(rounded(value, decimals, bound), decimals, format),
    signed: (value, decimals = decimalsStated(value, 1)) => printSigned(value, decimals, format),
    asIs: (value, most = 12, bound) => printAsIs(rounded(value, most, bound), most, format),
    date: (date) => printDate(date, format),
    timestamp: (moment) => printTimestamp(local(moment), format),
    day: (moment) => printDate(dateOf(local(moment)), format),
    local,
  };
}

function figureText(figure: Figure, figures: FigureFormats, units: Units): string {
  if (figure.print === 'apart') return apartText(figure, figures, units);
  // The arguments belong to this format, by the type of a figure.
  return (figures[figure.print] as (...of: readonly unknown[]) => string)(...figure.of);
}

function apartText({ quantity, pair, which, signed, extra }: Apart, figures: FigureFormats, units: Units): string {
  const [value, limit] = pair;
  const isSigned = signed && which === 0;
  if (typeof quantity === 'object') {
    const decimals = decimalsApart(value, limit, quantity.decimals);
    return (isSigned ? figures.signed : figures.plain)(pair[which], decimals);
  }
  const [factor, own] = [factorOf(quantity, units), decimalsOf(quantity, units)];
  const decimals = decimalsApart(value / factor, limit / factor, own + extra);
  return figures.measure(quantity, pair[which], { extra: decimals - own, signed: isSigned });
}

function inwardOf(
  units: Units,
  quantity: Quantity,
  value: number,
  { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY }: { least?: number; most?: number },
): Bound | undefined {
  const [factor, decimals] = [factorOf(quantity, units), decimalsOf(quantity, units)];
  const nearest = roundForPrint(value / factor, decimals);
  const slack = slackOf(value);
  const isWithin = value >= least - slack && value <= most + slack;
  if (!isWithin) return undefined;
  if (Number.isFinite(most) && nearest > roundWithin(most / factor, decimals, 'most')) return 'most';
  return Number.isFinite(least) && nearest < roundWithin(least / factor, decimals, 'least') ? 'least' : undefined;
}

/** Rounds a limit inward; other values stay for the formatter to round. */
function rounded(value: number, decimals: number, bound: Bound | undefined): number {
  return bound ? roundWithin(value, decimals, bound) : value;
}

interface Other {
  quantity: Quantity;
  value: number;
  bound: Bound | undefined;
}

/** Converts a limit from its value as printed in its own unit, so that the two figures agree. */
function inOtherUnits(format: NumberFormat, units: Units, { quantity, value, bound }: Other): string {
  const [own, other] = [factorOf(quantity, units), otherUnits(units)];
  const decimals = decimalsOf(quantity, other);
  const converted = (rounded(value / own, decimalsOf(quantity, units), bound) * own) / factorOf(quantity, other);
  return `${printNumber(rounded(converted, decimals, bound), decimals, format)}\u00a0${unitOf(quantity, other)}`;
}

export const METRIC: Units = { mass: 'kg', arm: 'mm', volume: 'l' };

/** Translates a message. */
export type Say = Formatter['text'];

/** Returns the translator for a language without a record, with figures in metric units. */
export function sayIn(locale: Locale): Say {
  return formatterFor(METRIC, locale).text;
}

/** Returns a value of a message in English. */
export function inEnglish(value: Value): string {
  return formatterFor(METRIC, ENGLISH).value(value);
}
