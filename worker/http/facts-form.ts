import * as z from 'zod';
import { OwnerDue, OwnerLimit } from '../pack/owner-facts-schema.ts';
import { PackSummary } from './schemas.ts';

const Limit = z.looseObject({
  date: z.string().optional(),
  hours: z.number().optional(),
  landings: z.number().optional(),
});

/** Something that stands open, as it is kept. */
const OpenItem = z.looseObject({
  item: z.string().optional(),
  id: z.string(),
  kind: z.enum(['deferral', 'watch', 'due', 'bulletin', 'limitation', 'test']),
  basis: z.enum(['directive', 'life-limit', 'programme', 'recommendation', 'owner', 'bulletin']).optional(),
  text: z.string(),
  until: Limit,
  of: z.string(),
  meter: z.string().optional(),
  done: Limit.optional(),
  toleranceHours: z.number().optional(),
  toleranceMonths: z.number().optional(),
  since: z.string().optional(),
  timesCarried: z.number().optional(),
});

const ReadFor = { pack: z.string().optional(), isWithdrawn: z.literal(true).optional() };

/** Meters as they were read last. */
const Readings = z.looseObject({
  meters: z.array(z.looseObject({ id: z.string(), of: z.string(), hours: z.number(), ...ReadFor })),
  landings: z.looseObject({ count: z.number(), ...ReadFor }).optional(),
  hoursPerYear: z.number().optional(),
});

/** What stands open after a pack. Members that are not known here are let be. */
export const OpenFacts = z.looseObject({ over: z.string().nullable(), items: z.array(OpenItem), readings: Readings });

export const SealedBy = z.looseObject({ id: z.string(), name: z.string(), kid: z.string() });

/** What loadings are worked out from: the figures that everything else is added to. */
const Loading = z.looseObject({
  aircraft: z.looseObject({ stations: z.array(z.looseObject({})) }),
  empty: z.looseObject({ massKg: z.number(), momentKgMm: z.number() }),
  units: z.looseObject({}),
  limits: z.looseObject({}),
});

/** The facts of a pack, whole: what is restored has to be of this form. */
export const FactsForm = z.looseObject({
  format: z.literal('slipmark-facts/1'),
  summary: z.strictObject(PackSummary.shape),
  sealedBy: SealedBy.nullable(),
  owner: z.looseObject({
    limits: z.array(z.looseObject(OwnerLimit.shape)),
    due: z.array(z.looseObject(OwnerDue.shape)),
    loading: Loading.nullable(),
  }),
  open: OpenFacts,
});
export type FactsForm = z.infer<typeof FactsForm>;

/** What lists show of a pack, out of its facts; undefined where they have none that can be read. */
export function summaryIn(factsJson: string): z.infer<typeof PackSummary> | undefined {
  try {
    return z.object({ summary: z.strictObject(PackSummary.shape) }).safeParse(JSON.parse(factsJson)).data?.summary;
  } catch {
    return undefined;
  }
}
