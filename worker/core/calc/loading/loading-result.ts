import * as z from 'zod';
import { MassMoment } from '../mass/mass-result.ts';
import { orUndefined } from '../numbers/result-field.ts';
import { GOVERNING } from './governing.ts';

/** A loading: its mass, and the mass on each station in kg (usable fuel for a tank). */
export const Loading = MassMoment.extend({
  load: z.record(z.string(), z.number()).meta({ description: 'kg by station' }),
});
export type Loading = z.infer<typeof Loading>;

export const Extreme = z.object({ loading: Loading, armMm: z.number() });
export type Extreme = z.infer<typeof Extreme>;

/** Point at which a set of loadings comes nearest to a limit, or exceeds it most. */
export const Margin = z.object({
  side: z.enum(['forward', 'aft', 'below', 'above']),
  /** Arm between the centre of gravity and the limit, positive inside; for `below` and `above`, mass in kg. */
  margin: z.number(),
  limit: z.number(),
  loading: Loading,
});
export type Margin = z.infer<typeof Margin>;

export const Extremes = z.object({
  /** Permitted loading with the most forward centre of gravity. */
  forward: Extreme,
  aft: Extreme,
  /** Smallest margin to each limit, negative beyond it; only with an envelope. */
  margins: z.array(Margin),
});
export type Extremes = z.infer<typeof Extremes>;

/** A joint limit that would keep every permitted loading inside the envelope. */
export const GroupProposal = z.object({ stations: z.array(z.string()), maximumKg: z.number() });
export type GroupProposal = z.infer<typeof GroupProposal>;

/** Min. mass of a solo pilot in kg, the seat, and the reason for it. */
export const LeastPilot = z.object({
  station: z.string(),
  kg: orUndefined(z.number()).describe('None where nobody may fly alone'),
  /** `custom`: the aircraft states none, so the figure of the regime is used. */
  governedBy: z.enum(['placard', 'custom', 'envelope', 'minimum-mass']),
});
export type LeastPilot = z.infer<typeof LeastPilot>;

/** Limit that bounds a load. */
export const Governing = z.enum(GOVERNING);
export type Governing = z.infer<typeof Governing>;

/** Max. load; negative if a limit is exceeded without any load. */
export const Allowance = z.object({
  kg: z.number(),
  governedBy: Governing.meta({ description: 'The limit that is met first' }),
});
export type Allowance = z.infer<typeof Allowance>;

/** A payload with full tanks that is too heavy to land at once. */
export const AfterBurn = z.object({
  payloadKg: z.number(),
  /** Min. fuel to burn before landing with it. */
  burnKg: z.number(),
  /** Max. usable fuel left after that burn. */
  leftKg: z.number(),
});
export type AfterBurn = z.infer<typeof AfterBurn>;

export const LoadLimits = z.object({
  usefulLoad: Allowance.describe('Crew, baggage and usable fuel together'),
  fullTanksPayload: Allowance.describe('Crew and baggage while every tank is full'),
  fullFuelKg: z.number().describe('Usable fuel of all tanks when full'),
  leastBurnKg: z.number().meta({ description: 'Fuel to be burnt before landing with that payload and full tanks' }),
  afterBurn: orUndefined(AfterBurn).meta({
    description:
      'Payload with full tanks that is too heavy to land at once, fuel to be burnt with it, and what is left',
  }),
});
export type LoadLimits = z.infer<typeof LoadLimits>;

/** A mass limit that a loading exceeds; `id` as the record has it. */
export const ExceededLimit = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('zero-fuel-mass') }),
  z.object({ kind: z.literal('landing-mass') }),
  z.object({ kind: z.literal('non-lifting-mass') }),
  z.object({ kind: z.literal('mass-without-external-load') }),
  z.object({ kind: z.literal('matched-ballast'), id: z.string() }),
  z.object({ kind: z.literal('station'), id: z.string() }),
  z.object({ kind: z.literal('loading-limit'), id: z.string() }),
]);
export type ExceededLimit = z.infer<typeof ExceededLimit>;

export const OverLimit = z.object({
  state: z.literal('limit-exceeded'),
  exceeded: ExceededLimit,
  overKg: z.number(),
});

/** Reasons for which a loading may not be flown, except a mass limit. */
export const OTHER_REFUSALS = [
  z.object({ state: z.literal('outside'), worst: Margin }),
  /** The pilot's seat is empty. */
  z.object({ state: z.literal('no-pilot') }),
  /** The pilot is lighter than the aircraft states for the seat, or flies alone and is lighter than the min. solo pilot. */
  z.object({ state: z.literal('too-light'), station: z.string(), leastKg: z.number(), underKg: z.number() }),
  z.object({ state: z.literal('no-solo'), station: z.string() }).describe('Alone, where nobody may be'),
  z.object({ state: z.literal('too-heavy'), overKg: z.number() }),
  z.object({ state: z.literal('outside-laterally'), side: z.enum(['left', 'right']), overMm: z.number() }),
  /** Lighter in flight than the minimum flying mass. */
  z.object({ state: z.literal('too-light-in-flight'), underKg: z.number() }),
] as const;

export const RefusedLoading = z.discriminatedUnion('state', [...OTHER_REFUSALS, OverLimit]);
export type RefusedLoading = z.infer<typeof RefusedLoading>;

/** Persons aboard: the pilot only, the pilot and one passenger, or a person in every seat of more than two. */
export const CrewAboard = z.enum(['solo', 'two', 'all']);
export type CrewAboard = z.infer<typeof CrewAboard>;

export const AllowedBaggage = z.object({ baggageKg: z.number() });

/** Baggage that may still be carried, or the reason for which this crew may not fly with this fuel. */
export const CrewFuelCell = z.union([AllowedBaggage, z.object({ refused: RefusedLoading })]);
export type CrewFuelCell = z.infer<typeof CrewFuelCell>;

export const CrewFuelRow = z.object({
  aboard: CrewAboard,
  eachKg: z.number().describe('Mass of each person'),
  cells: z.array(CrewFuelCell),
});
export type CrewFuelRow = z.infer<typeof CrewFuelRow>;

export const CrewFuelTable = z.object({
  /** Usable fuel of each column, all tanks together; each tank is filled to the same share. */
  usableL: z.array(z.number()),
  seats: z
    .array(z.object({ aboard: CrewAboard, stations: z.array(z.string()) }))
    .meta({ description: 'Stations that each crew of the rows sits on; every other seat is empty' }),
  rows: z.array(CrewFuelRow),
});
export type CrewFuelTable = z.infer<typeof CrewFuelTable>;
