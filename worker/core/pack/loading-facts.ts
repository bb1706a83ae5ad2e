import type { EmptyAircraft } from '../calc/loading/empty-aircraft.ts';
import type { LeastPilot } from '../calc/loading/least-pilot.ts';
import type { LoadLimits } from '../calc/loading/load-limits.ts';
import type { LoadingSheet } from '../calc/loading/loading-sheet.ts';
import type { Results } from '../calc/results.ts';
import type { Aircraft, LoadedAircraft, Visit } from '../record/visit.ts';
import type { Units } from '../units/quantity.ts';

/** Data for the calculation of loadings: the aircraft after the visit. */
export interface LoadingFacts {
  aircraft: LoadedAircraft;
  empty: EmptyAircraft;
  units: Units;
  /** Max. loads, and the limits that govern them. */
  limits: LoadLimits;
  /** Min. solo pilot; undefined without a seat for a pilot. */
  leastPilot: LeastPilot | undefined;
  /** Name of the configuration, if the aircraft has several. */
  name?: string;
  /** The other configurations of the aircraft. */
  others?: LoadingFacts[];
}

/**
 * Returns the data with which a page calculates loadings on its own; undefined if the visit leaves no empty mass, or if
 * nothing can be loaded.
 */
export function loadingFacts({ aircraft, units }: Visit, results: Results): LoadingFacts | undefined {
  const { schedule, loading, lateral } = results;
  if (!schedule || !loading || aircraft.stations.length === 0) return undefined;
  const empty = { massKg: schedule.massKg, momentKgMm: schedule.momentKgMm, lateralKgMm: lateral?.empty.momentKgMm };
  const others = results.configurations
    .filter((each) => each.aircraft.stations.length > 0)
    .map((each) => ({
      ...factsOf(each.aircraft, each.empty, each.loading, units),
      name: each.empty.name,
    }));
  return {
    ...factsOf(aircraft, empty, loading, units),
    ...(aircraft.configuration && { name: aircraft.configuration.name }),
    ...(others.length > 0 && { others }),
  };
}

function factsOf(
  aircraft: Aircraft,
  { massKg, momentKgMm, lateralKgMm }: EmptyAircraft,
  { limits, leastPilot }: LoadingSheet,
  units: Units,
): LoadingFacts {
  const { stations, loadingLimits, envelope, envelopeEquations, envelopeLowerEdge, mac, lateralEnvelope } = aircraft;
  const { maximumMassKg, maximumZeroFuelMassKg, maximumLandingMassKg, maximumMassWithExternalLoadKg } = aircraft;
  const { minimumMassKg, nonLifting } = aircraft;
  const bounds = { envelope, envelopeEquations, envelopeLowerEdge, mac, lateralEnvelope, minimumMassKg, nonLifting };
  const masses = { maximumMassKg, maximumZeroFuelMassKg, maximumLandingMassKg, maximumMassWithExternalLoadKg };
  return {
    aircraft: { stations, loadingLimits, ...bounds, ...masses },
    empty: { massKg, momentKgMm, ...(lateralKgMm !== undefined && { lateralKgMm }) },
    units,
    limits,
    leastPilot,
  };
}
