import * as z from 'zod';

/** Positions for one crew; none if the table has no line for it. */
export const SuspensionRow = z.object({
  persons: z.int(),
  eachKg: z.number(),
  decidesKg: z.number().describe('The mass that the table goes by'),
  positions: z.array(z.string()),
});
export type SuspensionRow = z.infer<typeof SuspensionRow>;

/** Position of hang point or attachment by the mass that decides. */
export const SuspensionTable = z.object({
  by: z.enum(['take-off-mass', 'occupants', 'front-occupant']),
  rows: z.array(SuspensionRow),
});
export type SuspensionTable = z.infer<typeof SuspensionTable>;

export const CockpitLimit = z.object({
  kg: z.number(),
  governedBy: z.enum(['envelope', 'seat', 'maximum-mass', 'non-lifting-mass']),
});
export type CockpitLimit = z.infer<typeof CockpitLimit>;

/** Min. and max. mass of the pilot in one state; undefined if no mass is allowed. */
export const CockpitLoad = z.object({
  state: z.string().describe('Name in the record; empty for the aircraft without a named state'),
  minimum: CockpitLimit.optional(),
  maximum: CockpitLimit.optional(),
});
export type CockpitLoad = z.infer<typeof CockpitLoad>;
