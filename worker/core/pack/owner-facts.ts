import { tanksOf } from '../calc/loading/fuel.ts';
import { loadStationsOf } from '../calc/loading/load-space.ts';
import type { LoadingSheet } from '../calc/loading/loading-sheet.ts';
import type { PlacedMass } from '../calc/mass/mass-result.ts';
import type { Results } from '../calc/results.ts';
import { recordFormatter } from '../record/record-formatter.ts';
import type { Aircraft, Visit } from '../record/visit.ts';
import { inEnglish } from '../text/formatter.ts';
import { said } from '../text/message.ts';
import { loadingFacts } from './loading-facts.ts';
import { nextDue } from './next-due.ts';
import type { OwnerDue, OwnerFacts, OwnerLimit } from './owner-facts-schema.ts';
import { OWNER_LIMIT_NAMES } from './owner-limit-names.ts';

/**
 * Returns the owner's facts of a visit: every limit for a pilot, and the items due.
 *
 * @param at time at which the pack was issued
 */
export function ownerFacts(visit: Visit, results: Results, at: string): OwnerFacts {
  const facts = {
    limits: [...ownLimits(visit.aircraft, results), ...statedLimits(visit.aircraft), ...ofConfigurations(results)],
    due: dueFacts(visit, results, at),
    loading: loadingFacts(visit, results) ?? null,
  };
  // Unknown values are left out, so that the kept facts read back unchanged.
  return JSON.parse(JSON.stringify(facts)) as OwnerFacts;
}

type LimitId = keyof typeof OWNER_LIMIT_NAMES;

/** Returns the limits of every other configuration, each under its identifier and its name. */
function ofConfigurations({ configurations }: Results): OwnerLimit[] {
  return configurations.flatMap(({ empty, aircraft, loading }) =>
    [...ownLimits(aircraft, { schedule: empty, loading }), ...statedLimits(aircraft)].map((limit) => ({
      ...limit,
      id: `configuration/${empty.id}/${limit.id}`,
      name: `${empty.name}: ${limit.name}`,
    })),
  );
}

interface Loaded {
  schedule: PlacedMass | undefined;
  loading: LoadingSheet | undefined;
}

function ownLimits(aircraft: Aircraft, { schedule, loading }: Loaded): OwnerLimit[] {
  if (!schedule || !loading) return [];
  const { usefulLoad, fullTanksPayload } = loading.limits;
  const { leastPilot } = loading;
  const { maximumMassKg, maximumZeroFuelMassKg, maximumLandingMassKg } = aircraft;
  const limit = (id: LimitId, bound: OwnerLimit['bound'], value: number | null, governedBy?: string): OwnerLimit => ({
    ...{
      id,
      name: inEnglish(said(OWNER_LIMIT_NAMES[id])),
      quantity: id === 'empty-arm' ? 'arm' : 'mass',
      bound,
      value,
    },
    ...(governedBy !== undefined && { governedBy }),
  });
  return [
    // A heavier empty aircraft carries less: its mass bounds as a minimum does.
    limit('empty-mass', 'least', schedule.massKg),
    limit('empty-arm', 'exact', schedule.armMm),
    limit('maximum-mass', 'most', maximumMassKg),
    ...(maximumZeroFuelMassKg === undefined ? [] : [limit('zero-fuel-mass', 'most', maximumZeroFuelMassKg)]),
    ...(maximumLandingMassKg === undefined ? [] : [limit('landing-mass', 'most', maximumLandingMassKg)]),
    limit('useful-load', 'most', usefulLoad.kg, usefulLoad.governedBy),
    limit('full-tanks-payload', 'most', fullTanksPayload.kg, fullTanksPayload.governedBy),
    ...(leastPilot ? [limit('least-pilot', 'least', leastPilot.kg ?? null, leastPilot.governedBy)] : []),
  ];
}

/** Returns the limits of stations, of tanks and of joint loads from the record. */
function statedLimits(aircraft: Aircraft): OwnerLimit[] {
  const limit = (id: string, name: string, quantity: 'mass' | 'volume', value: number): OwnerLimit => ({
    ...{ id, name, quantity, bound: 'most', value },
  });
  return [
    ...loadStationsOf(aircraft).map(({ id, name, maximumMassKg }) =>
      limit(`station/${id}`, name, 'mass', maximumMassKg),
    ),
    ...tanksOf(aircraft).map(({ id, name, capacityL, unusableL }) =>
      limit(`tank/${id}`, name, 'volume', Math.max(0, capacityL - unusableL)),
    ),
    ...(aircraft.loadingLimits ?? []).map(({ id, text, maximumMassKg }) =>
      limit(`joint/${id}`, text, 'mass', maximumMassKg),
    ),
  ];
}

function dueFacts(visit: Visit, results: Results, at: string): OwnerDue[] {
  return nextDue({ visit, results, fmt: recordFormatter(visit) }, at).map(
    ({ limit: _limit, left: _left, hoursLeft: _hoursLeft, isOverdue: _isOverdue, ...due }) => due as OwnerDue,
  );
}
