import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, count, date, flag, identifier, line, list, number, part, pastDate, reference } from './field.ts';
import { Product, totals } from './product.ts';

export const LifeLimit = part('lifeLimit', {
  hours: number('lifeLimit_hours', 'h', 100, { min: 0.1, max: 100_000 }).optional(),
  months: count('lifeLimit_months', 12, { min: 1, max: 1200 }).optional(),
  landings: count('lifeLimit_landings', 500, { min: 1, max: 1_000_000 }).optional(),
  launches: count('lifeLimit_launches', 3000, { min: 1, max: 1_000_000 }).optional(),
  cycles: count('lifeLimit_cycles', 700, { min: 1, max: 1_000_000 }).optional(),
  starts: count('lifeLimit_starts', 400, { min: 1, max: 1_000_000 }).optional(),
  date: date('lifeLimit_date', '2031-05-31').optional(),
  toEndOfMonth: flag('lifeLimit_toEndOfMonth', false).optional(),
});

export const Done = part('done', {
  date: pastDate('done_date', '2026-11-04', m.life_lastTimeDone, { before: ['visit.workEndedAt'] }).optional(),
  ...totals,
});

export const WasDue = part('wasDue', {
  date: date('wasDue_date', '2026-11-04').optional(),
  ...totals,
});

/** The product that a line is about: by its kind, and its serial number where two of a kind are aboard. */
export const LifeProduct = part('lifeProduct', {
  kind: Product.shape.kind,
  serial: Product.shape.serial.optional(),
});

/** The equipment list is of one configuration, and the line outlives its item until somebody takes it off. */
const OF_OTHER_LISTS = { code: 'LIFE_ITEM_UNKNOWN' };

export const Life = part('life', {
  id: identifier(['due-line'], 'life_id', 'L04'),
  item: line('life_item', 'Oil and filter'),
  of: reference('equipment-item', 'life_of', 'E13', OF_OTHER_LISTS).optional(),
  basis: choice('life_basis', ['directive', 'life-limit', 'programme', 'recommendation', 'owner'] as const),
  meter: reference('meter', 'life_meter', 'airframe').optional(),
  counters: list('counterNames', reference('counter', 'counterNames_each', 'winch-launches'), { max: 4 }).optional(),
  product: LifeProduct.optional(),
  interval: LifeLimit,
  dueAfter: choice('life_dueAfter', ['first', 'all'] as const).optional(),
  lastDone: Done,
  /** A count from the point at which it was due keeps tolerances from adding up. */
  wasDueAt: WasDue.optional(),
  toleranceHours: number('life_toleranceHours', 'h', 10, {
    min: 0,
    max: 10_000,
  }).optional(),
  toleranceMonths: count('life_toleranceMonths', 1, { max: 120 }).optional(),
  reference: line('life_reference', 'EM 05-20').optional(),
});
export type Life = z.infer<typeof Life>;

export const Lives = part('lives', {
  hoursPerYear: number('lives_hoursPerYear', 'h', 90, { min: 0, max: 8000 }).optional(),
  items: list('lives_items', Life, { max: 300 }),
});
export type Lives = z.infer<typeof Lives>;
