import type { MassMoment } from '../calc/mass-moment.ts';
import type { Results } from '../calc/results.ts';
import type { Units } from '../units/quantity.ts';
import type { LoadedAircraft, Visit } from '../visit/visit.ts';

/** All that a loading is worked out from: the aircraft as it stands after the visit. */
export interface LoadingFacts {
  aircraft: LoadedAircraft;
  empty: MassMoment;
  units: Units;
}

/** What a page needs to work out loadings by itself; undefined where the visit leaves no empty mass, or nothing can be loaded. */
export function loadingFacts({ aircraft, units }: Visit, { schedule }: Results): LoadingFacts | undefined {
  const { stations, loadingLimits, envelope, maximumMassKg, maximumZeroFuelMassKg } = aircraft;
  if (!schedule || stations.length === 0) return undefined;
  const { massKg, momentKgMm } = schedule;
  return {
    aircraft: { stations, loadingLimits, envelope, maximumMassKg, maximumZeroFuelMassKg } as LoadedAircraft,
    empty: { massKg, momentKgMm },
    units,
  };
}
