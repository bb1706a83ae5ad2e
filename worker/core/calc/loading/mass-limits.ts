import type { LoadedAircraft, Station } from '../../record/visit.ts';
import type { ExceededLimit } from './loading-result.ts';
import { nonLiftingStations } from './non-lifting-stations.ts';

/** Limit on the empty mass together with the load on some stations, in kg. */
export interface MassLimit {
  exceeded: ExceededLimit;
  stations: string[];
  maximumKg: number;
}

/**
 * Returns the limits of the aircraft’s mass without some of its load: without fuel, as it lands at the lightest, without
 * an external load, and of the non-lifting parts, which is given for the whole aircraft with its lifting parts.
 *
 * @source common practice, no source
 */
export function massLimitsOf(aircraft: LoadedAircraft): MassLimit[] {
  const { maximumMassKg, maximumMassWithExternalLoadKg, maximumZeroFuelMassKg, maximumLandingMassKg } = aircraft;
  const { nonLifting } = aircraft;
  const limit = (
    kind: 'zero-fuel-mass' | 'landing-mass' | 'mass-without-external-load',
    maximumKg: number | undefined,
    counts: (station: Station) => boolean,
  ): MassLimit[] =>
    maximumKg === undefined
      ? []
      : [{ exceeded: { kind }, stations: aircraft.stations.filter(counts).map(({ id }) => id), maximumKg }];
  return [
    ...limit('zero-fuel-mass', maximumZeroFuelMassKg, ({ kind }) => kind !== 'fuel'),
    ...limit('landing-mass', maximumLandingMassKg, (station) => !leavesBeforeLanding(station)),
    ...limit(
      'mass-without-external-load',
      maximumMassWithExternalLoadKg === undefined ? undefined : maximumMassKg,
      ({ kind }) => kind !== 'external',
    ),
    ...(nonLifting
      ? [
          {
            exceeded: { kind: 'non-lifting-mass' } as const,
            stations: nonLiftingStations(aircraft).map(({ id }) => id),
            maximumKg: nonLifting.maximumMassKg + nonLifting.liftingPartsMassKg,
          },
        ]
      : []),
  ];
}

/** Whether a load can be gone at the landing: fuel, and water that can be dumped. */
function leavesBeforeLanding(station: Station): boolean {
  return station.kind === 'fuel' || (station.kind === 'water' && station.isDumpable === true);
}
