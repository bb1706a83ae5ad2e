import type { LeastPilot } from '../calc/loading/least-pilot.ts';
import type { LoadLimits } from '../calc/loading/load-limits.ts';
import type { MassMoment } from '../calc/mass/mass-moment.ts';
import type { Results } from '../calc/results.ts';
import type { LoadedAircraft, Visit } from '../record/visit.ts';
import type { Units } from '../units/quantity.ts';

/** Data for the calculation of loadings: the aircraft after the visit. */
export interface LoadingFacts {
  aircraft: LoadedAircraft;
  empty: MassMoment;
  units: Units;
  /** Max. loads, and the limits that govern them. */
  limits: LoadLimits;
  /** Min. solo pilot; undefined without a seat for a pilot. */
  leastPilot: LeastPilot | undefined;
}

/**
 * Returns the data with which a page calculates loadings on its own; undefined if the visit leaves no empty mass, or if
 * nothing can be loaded.
 */
export function loadingFacts({ aircraft, units }: Visit, { schedule, loading }: Results): LoadingFacts | undefined {
  const { stations, loadingLimits, envelope } = aircraft;
  const { maximumMassKg, maximumZeroFuelMassKg, maximumLandingMassKg } = aircraft;
  if (!schedule || !loading || stations.length === 0) return undefined;
  const { massKg, momentKgMm } = schedule;
  const masses = { maximumMassKg, maximumZeroFuelMassKg, maximumLandingMassKg };
  return {
    aircraft: { stations, loadingLimits, envelope, ...masses } as LoadedAircraft,
    empty: { massKg, momentKgMm },
    units,
    limits: loading.limits,
    leastPilot: loading.leastPilot,
  };
}
