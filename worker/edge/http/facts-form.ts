import * as z from 'zod';
import {
  OpenItem,
  OpenLimit,
  ReadCounter,
  Readings,
  ReadLandings,
  ReadMeter,
} from '../../core/calc/open-items/open-item-result.ts';
import { OwnerDue, OwnerLimit } from '../../core/pack/owner-facts-schema.ts';
import { PackSummary } from '../../core/pack/summary.ts';

/** Open item as kept. */
const KeptItem = OpenItem.extend({ until: OpenLimit.loose(), done: OpenLimit.loose().exactOptional() }).loose();

/** Latest meter readings as kept. */
const KeptReadings = Readings.extend({
  meters: z.array(ReadMeter.loose()),
  landings: ReadLandings.loose().exactOptional(),
  counters: z.array(ReadCounter.loose()).exactOptional(),
}).loose();

/** Open items after a pack. Unknown members are accepted. */
export const OpenFacts = z.looseObject({
  over: z.string().nullable(),
  items: z.array(KeptItem),
  readings: KeptReadings,
});

export const SealedBy = z.looseObject({ id: z.string(), name: z.string(), kid: z.string() });

/** Basis of loadings: the figures to which everything else is added. */
const Loading = z.looseObject({
  aircraft: z.looseObject({ stations: z.array(z.looseObject({})) }),
  empty: z.looseObject({ massKg: z.number(), momentKgMm: z.number() }),
  units: z.looseObject({}),
  limits: z.looseObject({}),
});

/** Whole facts of a pack: restored facts must have this form. */
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

/** Returns the summary for lists from the facts of a pack; undefined if they have none that can be read. */
export function summaryIn(factsJson: string): z.infer<typeof PackSummary> | undefined {
  try {
    return z.object({ summary: z.strictObject(PackSummary.shape) }).safeParse(JSON.parse(factsJson)).data?.summary;
  } catch {
    return undefined;
  }
}
