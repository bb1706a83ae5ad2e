import * as z from 'zod';
import { MassMoment } from '../mass/mass-result.ts';
import { orUndefined } from '../numbers/result-field.ts';

/** A loading: what it weighs, and the mass on each station in kg (usable fuel for a tank). */
export const Loading = MassMoment.extend({
  load: z.record(z.string(), z.number()).meta({ description: 'kg by station' }),
});
export type Loading = z.infer<typeof Loading>;

export const Extreme = z.object({ loading: Loading, armMm: z.number() });
export type Extreme = z.infer<typeof Extreme>;

/** The place where a set of loadings comes nearest to a limit, or goes furthest beyond it. */
export const Margin = z.object({
  side: z.enum(['forward', 'aft', 'below', 'above']),
  /** Arm between the centre of gravity and the limit, positive inside; for `below` and `above`, mass in kg. */
  margin: z.number(),
  limit: z.number(),
  loading: Loading,
});
export type Margin = z.infer<typeof Margin>;

export const Extremes = z.object({
  /** The legal loading with the foremost centre of gravity. */
  forward: Extreme,
  aft: Extreme,
  /** Where legal loadings come nearest to each limit, or beyond it; only with an envelope. */
  margins: z.array(Margin),
});
export type Extremes = z.infer<typeof Extremes>;

/** The least pilot who may fly alone, in kg, in which seat, and what asks for him. */
export const LeastPilot = z.object({
  station: z.string(),
  kg: orUndefined(z.number()).describe('None where nobody may fly alone'),
  /** `custom`: the aircraft states none, so the figure of the regime is taken. */
  governedBy: z.enum(['placard', 'custom', 'envelope']),
});
export type LeastPilot = z.infer<typeof LeastPilot>;

/** What stops a load from being greater. */
export const Governing = z.enum([
  'maximum-mass',
  'envelope',
  'zero-fuel-mass',
  'landing-mass',
  'joint-limits',
  'places',
]);
export type Governing = z.infer<typeof Governing>;

/** The most that may be loaded; negative where a limit is passed without any load. */
export const Allowance = z.object({
  kg: z.number(),
  governedBy: Governing.meta({ description: 'The limit that is met first' }),
});
export type Allowance = z.infer<typeof Allowance>;

/** A payload with full tanks that is too heavy to land at once. */
export const AfterBurn = z.object({
  payloadKg: z.number(),
  /** Least fuel to be burnt before landing with it. */
  burnKg: z.number(),
  /** Usable fuel that is left at the most once that is burnt. */
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
  z.object({ kind: z.literal('station'), id: z.string() }),
  z.object({ kind: z.literal('loading-limit'), id: z.string() }),
]);
export type ExceededLimit = z.infer<typeof ExceededLimit>;

export const OverLimit = z.object({
  state: z.literal('limit-exceeded'),
  exceeded: ExceededLimit,
  /** Nobody sits where the aircraft is flown from. */
  /** The pilot is lighter than the aircraft states for the seat, or alone and lighter than the least solo pilot. */
  overKg: z.number(),
});

/** Why a loading may not be flown, but for a mass limit. */
export const OTHER_REFUSALS = [
  z.object({ state: z.literal('outside'), worst: Margin }),
  z.object({ state: z.literal('no-pilot') }),
  z.object({ state: z.literal('too-light'), station: z.string(), leastKg: z.number(), underKg: z.number() }),
  z.object({ state: z.literal('no-solo'), station: z.string() }).describe('Alone, where nobody may be'),
  z.object({ state: z.literal('too-heavy'), overKg: z.number() }),
] as const;

export const RefusedLoading = z.discriminatedUnion('state', [...OTHER_REFUSALS, OverLimit]);
export type RefusedLoading = z.infer<typeof RefusedLoading>;

/** Who is aboard: the pilot alone, the pilot and one passenger, or somebody in every seat of more than two. */
export const CrewAboard = z.enum(['solo', 'two', 'all']);
export type CrewAboard = z.infer<typeof CrewAboard>;

export const AllowedBaggage = z.object({ baggageKg: z.number() });

/** Baggage that may still be carried, or why this crew may not fly with this fuel. */
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
