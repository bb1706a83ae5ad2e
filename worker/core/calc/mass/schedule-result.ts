import * as z from 'zod';
import { orUndefined } from '../numbers/result-field.ts';
import { MassArmUncertainty, PlacedMass } from './mass-result.ts';

/** Reason for a change of the empty mass, with the texts of the record. */
export const HistoryCause = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('stated'), reason: z.string() }),
  z.object({ kind: z.literal('baseline'), reference: z.string() }),
  z.object({ kind: z.literal('record-corrected') }),
  z.object({ kind: z.literal('modification'), modification: z.string(), title: z.string() }),
  z.object({ kind: z.literal('weighed') }),
]);
export type HistoryCause = z.infer<typeof HistoryCause>;

/** A step of the running empty-mass history: the change, and the condition after it. */
export const HistoryEntry = PlacedMass.extend({
  date: z.string(),
  cause: HistoryCause,
  changeKg: z.number(),
  changeKgMm: z.number(),
});
export type HistoryEntry = z.infer<typeof HistoryEntry>;

/** The revised weight schedule. */
export const Schedule = PlacedMass.extend({
  basis: z.enum(['weighed', 'computed']),
  macPercent: orUndefined(z.number()),
  expanded: orUndefined(MassArmUncertainty).describe('k = 2, where known'),
  weighedOn: orUndefined(z.string()),
  changesSinceWeighing: z.number().describe('Computed changes since the last weighing'),
  /** Crew, baggage and usable fuel together, by the limit that is met first. */
  usefulLoadKg: z.number(),
  supersedes: orUndefined(z.string()),
  history: z.array(HistoryEntry),
});
export type Schedule = z.infer<typeof Schedule>;
