import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, count, line, list, number, part, pastDate, reference } from './field.ts';

/** Products other than engine and propeller that have a separate log book or card. */
export const PRODUCTS = [
  'engine',
  'motor',
  'propeller',
  'rotor',
  'rotor-head',
  'tail-rotor',
  'gearbox',
  'wing',
  'canopy',
  'battery',
  'rescue-system',
  'floats',
] as const;
export type ProductKind = (typeof PRODUCTS)[number];

/** Totals by meter and counters at one time. */
export const totals = {
  hours: number('counters_hours', 'h', 1204.6, {
    min: 0,
    max: 200_000,
  }).optional(),
  landings: count('counters_landings', 2311, { max: 10_000_000 }).optional(),
  launches: count('counters_launches', 2212, { max: 10_000_000 }).optional(),
  cycles: count('counters_cycles', 212, { max: 10_000_000 }).optional(),
  starts: count('counters_starts', 640, { max: 10_000_000 }).optional(),
};

/** A product is carried from visit to visit; not every visit reads its meters. */
const OF_OTHER_VISITS = { code: 'PRODUCT_TIME_UNCOUNTED' };

/** When a product was fitted, the readings then, and the time it had. */
export const Fitted = part('fitted', {
  on: pastDate('fitted_on', '2019-04-12', m.product_fitting),
  meter: reference('meter', 'life_meter', 'engine', OF_OTHER_VISITS).optional(),
  counters: list('counterNames', reference('counter', 'counterNames_each', 'pack-a-cycles', OF_OTHER_VISITS), {
    max: 4,
  }).optional(),
  at: part('fittedAt', totals),
  sinceNew: part('sinceNew', totals),
  sinceOverhaul: part('sinceOverhaul', totals).optional(),
});
export type Fitted = z.infer<typeof Fitted>;

export const ProductFields = {
  maker: line('product_maker', 'Tarn Motors'),
  model: line('product_model', 'T4-90'),
  serial: line('product_serial', 'T4-2217', 60),
  fitted: Fitted.optional(),
};

/** A product with a separate log book or card. */
export const Product = part('product', { kind: choice('product_kind', PRODUCTS), ...ProductFields });
