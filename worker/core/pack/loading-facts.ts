import type { LeastPilot } from '../calc/loading/least-pilot.ts';
import type { LoadLimits } from '../calc/loading/load-limits.ts';
import type { MassMoment } from '../calc/mass/mass-moment.ts';
import type { Results } from '../calc/results.ts';
import type { LoadedAircraft, Visit } from '../record/visit.ts';
import type { Units } from '../units/quantity.ts';

/** All that a loading is worked out from: the aircraft as it stands after the visit. */
export interface LoadingFacts {
  aircraft: LoadedAircraft;
  empty: MassMoment;
  units: Units;
  /** The most that may be loaded, and which limit governs it. */
  limits: LoadLimits;
  /** Least solo pilot; undefined where there is no seat for a pilot. */
  leastPilot: LeastPilot | undefined;
}

/** What a page needs to work out loadings by itself; undefined where the visit leaves no empty mass, or nothing can be loaded. */
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
