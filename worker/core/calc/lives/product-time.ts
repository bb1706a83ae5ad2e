import { COUNTS, NUMBER_CLOCKS, type NumberClock } from '../../record/counts.ts';
import type { ProductKind } from '../../record/product.ts';
import type { Aircraft, Visit } from '../../record/visit.ts';
import type { Counting } from '../open-items/open-item-result.ts';
import { type CountedBy, countersFor, countNow, totalCount } from './counting.ts';
import type { ProductTime } from './product-time-result.ts';
import { totalHours } from './total-hours.ts';

export type { ProductTime } from './product-time-result.ts';

type Meter = NonNullable<Visit['meters']>['readings'][number];
type Fitted = NonNullable<NonNullable<Aircraft['engine']>['fitted']>;
type Metered = Pick<Visit, 'meters'>;
type Plate = NonNullable<Aircraft['propeller']>;
type Named = Pick<Meter, 'of'> & { meter?: string };

/** A product aboard. */
export interface Product {
  kind: ProductKind;
  /** Company and model on the data plate. */
  name: string;
  serial: string;
  fitted?: Fitted | undefined;
  /** Path in the record. */
  path: readonly (string | number)[];
}

/** Returns the products of an aircraft, engine and propeller first. */
export function productsOf({ engine, propeller, products = [] }: Partial<Aircraft>): Product[] {
  const product = (kind: ProductKind, of: Plate, ...path: (string | number)[]): Product => ({
    ...{ kind, name: `${of.maker} ${of.model}`, serial: of.serial, path: ['aircraft', ...path] },
    fitted: of.fitted,
  });
  return [
    ...(engine ? [product('engine', engine, 'engine')] : []),
    ...(propeller ? [product('propeller', propeller, 'propeller')] : []),
    ...products.map((each, index) => product(each.kind, each, 'products', index)),
  ];
}

/** Returns the product that a line names; undefined if none is aboard, or several are and no serial number decides. */
export function productNamed(
  aircraft: Partial<Aircraft> | undefined,
  named: { kind: ProductKind; serial?: string | undefined } | undefined,
): Product | undefined {
  if (!aircraft || !named) return undefined;
  const { kind, serial } = named;
  const found = productsOf(aircraft).filter((each) => each.kind === kind && (serial ?? each.serial) === each.serial);
  return found.length === 1 ? found[0] : undefined;
}

/** Meters by product, where they are not called the same. Floats and rescue systems have no hour meter. */
const METER_OF: Partial<Record<ProductKind, Meter['of']>> = {
  motor: 'engine',
  'rotor-head': 'rotor',
  'tail-rotor': 'rotor',
  floats: 'airframe',
  'rescue-system': 'airframe',
};

/**
 * Returns the meter of a product: the one that its fitting names, else the first of its kind. Without a recorded fitting
 * the airframe's replaces a missing one; with one it does not, because the two never agree.
 */
export function meterOfProduct({ meters }: Metered, { kind, fitted }: Pick<Product, 'kind' | 'fitted'>): Named {
  const readings = meters?.readings ?? [];
  const of = METER_OF[kind] ?? (kind as Meter['of']);
  if (fitted?.meter !== undefined) {
    const named = readings.find(({ id }) => id === fitted.meter);
    return { of: named?.of ?? of, meter: fitted.meter };
  }
  return { of: fitted || readings.some((reading) => reading.of === of) ? of : 'airframe' };
}

/** Totals of a product on a clock, at arrival and at release, and the counter of a count. */
interface Totals {
  arrival: number | undefined;
  now: number | undefined;
  counter: Counting | undefined;
}

function totalsOf(visit: Metered, product: Pick<Product, 'kind' | 'fitted'>, clock: NumberClock): Totals {
  if (clock === 'hours') {
    const { of, meter } = meterOfProduct(visit, product);
    const found = visit.meters?.readings.find((each) => each.of === of && (meter === undefined || each.id === meter));
    if (!found) return { arrival: undefined, now: undefined, counter: undefined };
    return { arrival: totalHours({ ...found, outHours: found.inHours }), now: totalHours(found), counter: undefined };
  }
  const [counter] = countersFor(visit, clock, { counters: product.fitted?.counters, of: product.kind });
  const found = visit.meters?.counters?.find(({ id, counts }) => id === counter?.id && counts === clock);
  const arrival = found && totalCount({ ...found, out: found.in });
  return { arrival, now: countNow(visit, counter), counter };
}

/**
 * Returns what a total by the meter exceeds the time of a product since new by: nothing where its fitting does not state
 * both.
 *
 * @source common practice, no source
 */
export function shiftOf(product: Pick<Product, 'fitted'> | undefined, clock: NumberClock): number | undefined {
  const { at, sinceNew } = product?.fitted ?? {};
  const [then, had] = [at?.[clock], sinceNew?.[clock]];
  return then === undefined || had === undefined ? undefined : then - had;
}

/**
 * Returns the time of every product whose fitting is recorded: time when fitted, plus the total now, minus the total
 * when fitted. What an earlier product flew is in both totals, so it never counts.
 *
 * @source common practice, no source; total time in service of engine and propeller and the status of life-limited parts
 * are records of 14 CFR 91.417(a)(2), read
 */
export function productTimes({ aircraft, ...visit }: Pick<Visit, 'aircraft' | 'meters'>): ProductTime[] {
  return productsOf(aircraft).flatMap(({ fitted, kind, serial }) => {
    if (!fitted) return [];
    const clocks = NUMBER_CLOCKS.flatMap((clock) => {
      const [then, had, overhauled] = [fitted.at[clock], fitted.sinceNew[clock], fitted.sinceOverhaul?.[clock]];
      if (then === undefined && had === undefined && overhauled === undefined) return [];
      const { now, ...totals } = totalsOf(visit, { kind, fitted }, clock);
      const run = now === undefined || then === undefined ? undefined : now - then;
      const since = (before: number | undefined): number | undefined =>
        before === undefined || run === undefined ? undefined : before + run;
      return [{ clock, ...totals, now, sinceNew: since(had), sinceOverhaul: since(overhauled) }];
    });
    return [{ kind, serial, fittedOn: fitted.on, ...meterOfProduct(visit, { kind, fitted }), clocks }];
  });
}

/** Returns the counters that a line names, else those of its product. */
export function countedBy(
  visit: { aircraft?: Aircraft | undefined },
  { counters, product }: Omit<Line, 'interval'>,
): CountedBy {
  const named = counters ?? productNamed(visit.aircraft, product)?.fitted?.counters;
  return { counters: named, of: product?.kind };
}

/** Clocks of a line: its meter, its counters, its product, and what is added to the time of that product to get totals. */
export interface LifeClocks {
  named: Named;
  counting: Counting[];
  product: Product | undefined;
  shift(clock: NumberClock): number;
}

interface Line {
  meter?: string | undefined;
  counters?: readonly string[] | undefined;
  product?: { kind: ProductKind; serial?: string | undefined } | undefined;
  interval: Readonly<Partial<Record<NumberClock, number | undefined>>>;
}

/** Returns the clocks of a line. Its product counts by its own meter and counters. */
export function clocksOf(visit: Metered & { aircraft?: Aircraft | undefined }, line: Line): LifeClocks {
  const product = productNamed(visit.aircraft, line.product);
  const meter = visit.meters?.readings.find(({ id }) => id === line.meter);
  const named: Named =
    product && line.meter === undefined
      ? meterOfProduct(visit, product)
      : { of: meter?.of ?? 'airframe', ...(line.meter !== undefined && { meter: line.meter }) };
  const by = countedBy(visit, line);
  const counting = COUNTS.flatMap((clock) =>
    line.interval[clock] === undefined ? [] : (countersFor(visit, clock, by)[0] ?? []),
  );
  return { named, counting, product, shift: (clock) => shiftOf(product, clock) ?? 0 };
}
