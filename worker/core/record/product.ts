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

const clocks = {
  hours: number('productClocks_hours', 'h', 854.2, { min: 0, max: 200_000 }).optional(),
  landings: count('productClocks_landings', 0, { max: 10_000_000 }).optional(),
  launches: count('productClocks_launches', 0, { max: 10_000_000 }).optional(),
  cycles: count('productClocks_cycles', 0, { max: 10_000_000 }).optional(),
  starts: count('productClocks_starts', 0, { max: 10_000_000 }).optional(),
};

/** When a product was fitted, the readings then, and the time it had. */
export const Fitted = part('fitted', {
  on: pastDate('fitted_on', '2019-04-12', m.product_fitting),
  meter: reference('meter', 'fitted_meter', 'engine').optional(),
  counters: list('fitted_counters', reference('counter', 'fitted_counters_each', 'pack-a-cycles'), {
    max: 4,
  }).optional(),
  at: part('fittedAt', clocks),
  sinceNew: part('sinceNew', clocks),
  sinceOverhaul: part('sinceOverhaul', clocks).optional(),
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
