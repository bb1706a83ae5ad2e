import * as z from 'zod';
import { PHASES } from '../../record/electrical.ts';
import { orUndefined } from '../numbers/result-field.ts';

/** Loads in one phase. */
export const Sum = z.object({
  continuousA: z.number(),
  peakA: z.number().describe('Continuous and intermittent together'),
});
export type Sum = z.infer<typeof Sum>;

export const PhaseLoad = Sum.extend({
  phase: z.enum(PHASES),
  before: Sum.describe('As it was before the visit'),
  /** Current that the sources give; undefined on the battery only. */
  capacityA: orUndefined(z.number()),
});
export type PhaseLoad = z.infer<typeof PhaseLoad>;

/** A segment of flight on the battery. */
export const BatterySegment = z.object({
  /** Until loads are shed, on the loads that are left on, or approach and landing. */
  use: z.enum(['before-shedding', 'after-shedding', 'landing']),
  loadA: z.number(),
  /** Undefined without current: the segment does not end. */
  minutes: orUndefined(z.number()),
  ampMinutes: z.number(),
});
export type BatterySegment = z.infer<typeof BatterySegment>;

export const Endurance = z.object({
  usableAmpMinutes: z.number(),
  stretches: z.array(BatterySegment),
  minutes: orUndefined(z.number()).describe('None where nothing draws current'),
  neededMin: z.number(),
});
export type Endurance = z.infer<typeof Endurance>;

export const Ampacity = z.object({
  currentA: z.number().describe('Max. continuous current'),
  from: z
    .enum(['record', 'table', 'table-reduced'])
    .describe('Reduced: in surroundings hotter than those of the table'),
});
export type Ampacity = z.infer<typeof Ampacity>;

/** A voltage drop. */
export const LoadedDrop = z.object({
  currentA: z.number(),
  dropV: z.number(),
  conductorC: z.number().describe('Temperature of the conductor at this current, estimated'),
});
export type LoadedDrop = z.infer<typeof LoadedDrop>;

/** A voltage drop with its limit. */
export const Drop = LoadedDrop.extend({ limitV: z.number() });
export type Drop = z.infer<typeof Drop>;

export const CircuitResult = z.object({
  id: z.string(),
  /** Maximum over all phases; for a source’s main feeder min. its rated current. */
  continuousA: z.number(),
  /** For a main feeder min. its rated current, or the five-minute rate of the battery and the loads of the start. */
  peakA: z.number(),
  /** Undefined if neither record nor table rates the wire. */
  ampacity: orUndefined(Ampacity),
  conductorC: z.number().describe('Estimated, at the continuous current'),
  /** For a main feeder at its rated current; undefined without current, and for a size that the table lacks. */
  continuousDrop: orUndefined(Drop),
  /** Undefined if the circuit has no intermittent load, and for a main feeder, whose limit covers any load. */
  peakDrop: orUndefined(Drop),
  /** Of the main feeder of a battery, with all loads of the start; no limit is known for it. */
  startDrop: orUndefined(LoadedDrop),
  measuredLimitV: z.number().describe('Limit of a drop measured under load'),
  /** Longest run within the limit of every drop; undefined without a current. */
  longestRunM: orUndefined(z.number()),
  /** For a size that the chart lacks, the ampacity of the wire. */
  protectionLimit: orUndefined(z.object({ limitA: z.number(), from: z.enum(['record', 'table', 'ampacity']) })),
});
export type CircuitResult = z.infer<typeof CircuitResult>;

/** Results of the electrical system. */
export const ElectricalResult = z.object({
  phases: z.array(PhaseLoad),
  endurance: orUndefined(Endurance),
  circuits: z.array(CircuitResult).describe('In the order of the record'),
});
export type ElectricalResult = z.infer<typeof ElectricalResult>;
