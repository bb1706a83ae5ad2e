import * as z from 'zod';
import { WeighingPoint } from '../../record/weighing.ts';
import { MassArmUncertainty, MassMoment, PlacedMass } from '../mass/mass-result.ts';
import { orUndefined } from '../numbers/result-field.ts';

/** One run at one point: net = gross + correction − tare. */
export const ReducedRun = z.object({ grossKg: z.number(), correctionKg: z.number(), netKg: z.number() });
export type ReducedRun = z.infer<typeof ReducedRun>;

export const ReducedPoint = PlacedMass.extend({
  id: z.string(),
  name: z.string(),
  side: WeighingPoint.shape.side,
  tareKg: z.number(),
  runs: z.array(ReducedRun),
  spreadKg: z.number().describe('Greatest less smallest net reading'),
});
export type ReducedPoint = z.infer<typeof ReducedPoint>;

const itemLine = <Kind extends string>(kind: Kind) => z.object({ kind: z.literal(kind), item: z.string() });
const fuelLine = <Kind extends string>(kind: Kind) => z.object({ kind: z.literal(kind), tank: z.string() });

/** Kind of an adjustment, with the name of the item or the tank from the record. */
export const AdjustmentLine = z.discriminatedUnion('kind', [
  itemLine('item-aboard'),
  itemLine('item-missing'),
  fuelLine('stated-fuel'),
  fuelLine('usable-fuel'),
  fuelLine('unusable-fuel'),
]);
export type AdjustmentLine = z.infer<typeof AdjustmentLine>;

/** A mass subtracted or added from the weighed to the empty condition; signed. */
export const Adjustment = PlacedMass.extend({
  line: AdjustmentLine,
  why: z.enum(['aboard', 'missing', 'fuel', 'unusable-fuel']),
  pointer: z.string(),
  /** Arm at which an error of its mass acts: of fuel in a tank with a table, not the arm of all of it. */
  errorArmMm: z.number(),
  /** Limit of error of its mass, zero if none is stated; also if the mass itself is zero. */
  massLimitKg: z.number(),
});
export type Adjustment = z.infer<typeof Adjustment>;

const ofPoint = <Kind extends string>(kind: Kind) => z.object({ kind: z.literal(kind), point: z.string() });

/** A component of the uncertainty budget, with the names from the record. */
export const BudgetComponent = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('scale-error-limit'), scale: z.string() }),
  ofPoint('display-step'),
  ofPoint('arm-as-measured'),
  ofPoint('scatter').extend({ runs: z.int() }),
  z.object({ kind: z.literal('mass-as-stated'), line: AdjustmentLine }),
  z.object({ kind: z.literal('levelling') }),
  z.object({ kind: z.literal('oil-level') }),
]);
export type BudgetComponent = z.infer<typeof BudgetComponent>;

/** An independent contribution to an uncertainty, with the sensitivities of mass and moment: ∂m/∂q and ∂M/∂q. */
export const Contribution = z.object({
  component: BudgetComponent,
  quantity: z.enum(['mass', 'arm', 'volume']),
  standard: z.number(),
  massSensitivity: z.number(),
  momentSensitivity: z.number(),
});
export type Contribution = z.infer<typeof Contribution>;

/** Result of the second weighing, and how far it differs from the first. */
export const RepeatedResult = z.object({
  massKg: z.number(),
  armMm: z.number(),
  differenceKg: z.number(),
  differenceMm: z.number(),
});
export type RepeatedResult = z.infer<typeof RepeatedResult>;

export const WeighingResult = z.object({
  points: z.array(ReducedPoint),
  asWeighed: MassMoment.describe('What the scales felt, tare taken off'),
  adjustments: z.array(Adjustment),
  /** As weighed, less items aboard, plus missing items. */
  empty: PlacedMass,
  /** Total of each run, if all points have the same number of runs. */
  runTotalsKg: z.array(z.number()),
  budget: z.array(Contribution),
  standard: MassArmUncertainty,
  expanded: MassArmUncertainty.describe('k = 2'),
  /** Undefined if the aircraft was not weighed again, or not at every point. */
  repeated: orUndefined(RepeatedResult),
});
export type WeighingResult = z.infer<typeof WeighingResult>;
