import { isAtMost } from '../numbers/limit-met.ts';
import {
  type CockpitExtra,
  type CockpitSeat,
  leastPilotByAftLimit,
  mostPilotByForwardLimit,
  type PilotMass,
} from './cockpit-load.ts';
import { mostPilotByNonLifting } from './non-lifting.ts';

/** Limits that a pilot's mass can meet; of two that are met at once the first is named. */
export type MinimumGovernor = 'aft-limit' | 'stated-minimum';
export type MaximumGovernor = 'forward-limit' | 'non-lifting-mass' | 'maximum-mass' | 'stated-maximum';

/** A mass of a state; it counts among the non-lifting parts if the manual says so. */
export type StateExtra = CockpitExtra & { isNonLifting?: boolean };

/** A state in which the aircraft may fly: water, battery, engine, fuel, span. */
export interface CockpitState {
  id: string;
  extras: readonly StateExtra[];
  /** Limits that the manual prints for this state. */
  minimumKg?: number;
  maximumKg?: number;
}

/** An aircraft with the limits of its cockpit; a limit that is left out does not count. */
export interface Cockpit extends CockpitSeat {
  aftLimitMm?: number;
  forwardLimitMm?: number;
  /** Max. mass of the non-lifting parts, and those of the empty aircraft. */
  nonLifting?: { maximumKg: number; parts: readonly { massKg: number; standardKg?: number }[] };
  maximumMassKg?: number;
  /** Limits of the seat in every state. */
  minimumKg?: number;
  maximumKg?: number;
}

/** A limit of the pilot's mass, and what sets it. */
export type GovernedPilot<Governor> = PilotMass & { governedBy: Governor };

/** Permitted pilots of one state. */
export interface CockpitRow {
  id: string;
  /** Undefined if nothing sets a min. above zero. */
  minimum: GovernedPilot<MinimumGovernor> | undefined;
  /** Undefined if the state has no max. */
  maximum: GovernedPilot<MaximumGovernor> | undefined;
  /** Max. less min.; undefined without a max. */
  marginKg: number | undefined;
  /** Whether any pilot is permitted: manuals print states whose min. is above their max. */
  isFlyable: boolean;
}

/**
 * Returns min. and max. pilot for every state, each with the limit that governs.
 *
 * min. = max(aft limit, stated minima)        max. = min(forward limit, non-lifting mass, maximum mass, stated maxima)
 *
 * Each limit takes the optional masses of the state that are worst for it. A state without a permitted pilot stays in
 * the list and is marked.
 *
 * @returns in the order of the states; undefined if the seat is not ahead of the limits of the centre of gravity
 * @source derived; checked against brute force over every combination of optional masses
 */
export function cockpitGrid(cockpit: Cockpit, states: readonly CockpitState[]): CockpitRow[] | undefined {
  const { aftLimitMm = Number.POSITIVE_INFINITY, forwardLimitMm = Number.POSITIVE_INFINITY, seatArmMm } = cockpit;
  if (!(seatArmMm < aftLimitMm && seatArmMm < forwardLimitMm)) return undefined;
  return states.map((state) => {
    const minimum = minimumOf(cockpit, state);
    const maximum = maximumOf(cockpit, state);
    const fromKg = minimum?.massKg ?? 0;
    return {
      id: state.id,
      minimum,
      maximum,
      marginKg: maximum && maximum.massKg - fromKg,
      isFlyable: !maximum || isAtMost(fromKg, maximum.massKg),
    };
  });
}

const stated = <Governor>(massKg: number | undefined, governedBy: Governor): GovernedPilot<Governor>[] =>
  massKg === undefined ? [] : [{ massKg, standardKg: 0, governedBy }];

const computed = <Governor>(pilot: PilotMass | undefined, governedBy: Governor): GovernedPilot<Governor>[] =>
  pilot ? [{ ...pilot, governedBy }] : [];

function minimumOf(cockpit: Cockpit, { extras, minimumKg }: CockpitState): CockpitRow['minimum'] {
  const { aftLimitMm: limitArmMm } = cockpit;
  const limits = [
    ...computed(
      limitArmMm === undefined ? undefined : leastPilotByAftLimit({ ...cockpit, extras, limitArmMm }),
      'aft-limit' as const,
    ),
    ...stated(cockpit.minimumKg, 'stated-minimum' as const),
    ...stated(minimumKg, 'stated-minimum' as const),
  ].filter(({ massKg }) => massKg > 0);
  return limits.reduce<CockpitRow['minimum']>(
    (top, each) => (top && top.massKg >= each.massKg ? top : each),
    undefined,
  );
}

function maximumOf(cockpit: Cockpit, { extras, maximumKg }: CockpitState): CockpitRow['maximum'] {
  const { forwardLimitMm: limitArmMm, nonLifting } = cockpit;
  const limits = [
    ...computed(
      limitArmMm === undefined ? undefined : mostPilotByForwardLimit({ ...cockpit, extras, limitArmMm }),
      'forward-limit' as const,
    ),
    ...computed(
      nonLifting &&
        mostPilotByNonLifting(nonLifting.maximumKg, [
          ...nonLifting.parts,
          ...heaviest(extras.filter(({ isNonLifting }) => isNonLifting)),
        ]),
      'non-lifting-mass' as const,
    ),
    ...computed(byMaximumMass(cockpit, extras), 'maximum-mass' as const),
    ...stated(cockpit.maximumKg, 'stated-maximum' as const),
    ...stated(maximumKg, 'stated-maximum' as const),
  ];
  return limits.reduce<CockpitRow['maximum']>(
    (low, each) => (low && low.massKg <= each.massKg ? low : each),
    undefined,
  );
}

/** Optional masses count where they take from the pilot: all but the missing ones. */
const heaviest = (extras: readonly StateExtra[]): StateExtra[] =>
  extras.filter(({ isOptional, massKg }) => !isOptional || massKg > 0);

function byMaximumMass(
  { maximumMassKg, emptyKg, budget = [] }: Cockpit,
  extras: readonly StateExtra[],
): PilotMass | undefined {
  if (maximumMassKg === undefined) return undefined;
  const aboard = heaviest(extras);
  const uncertain = [
    ...budget.map(({ standard, massSensitivity }) => standard * massSensitivity),
    ...aboard.map(({ standardKg = 0 }) => standardKg),
  ];
  return {
    massKg: aboard.reduce((left, { massKg }) => left - massKg, maximumMassKg - emptyKg),
    standardKg: Math.hypot(...uncertain),
  };
}
