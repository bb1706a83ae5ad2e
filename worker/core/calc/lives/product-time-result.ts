import * as z from 'zod';
import { NUMBER_CLOCKS } from '../../record/counts.ts';
import { Meter } from '../../record/meters.ts';
import { Product } from '../../record/product.ts';
import { orUndefined } from '../numbers/result-field.ts';
import { Counting } from '../open-items/open-item-result.ts';

/** Time of a product since new and since overhaul on one clock, at release. */
export const ProductClock = z.object({
  clock: z.enum(NUMBER_CLOCKS),
  counter: orUndefined(Counting),
  arrival: orUndefined(z.number()).describe('Total by its meter or its counter when the aircraft arrived'),
  now: orUndefined(z.number()).describe('Total by its meter or its counter'),
  sinceNew: orUndefined(z.number()),
  sinceOverhaul: orUndefined(z.number()),
});

/** Times of a product whose fitting the record states. */
export const ProductTime = z.object({
  kind: Product.shape.kind,
  serial: z.string(),
  fittedOn: z.string(),
  /** Product that the meter of its hours counts, and the meter if its fitting names one. */
  of: Meter.shape.of,
  meter: z.string().exactOptional(),
  clocks: z.array(ProductClock),
});
export type ProductTime = z.infer<typeof ProductTime>;
