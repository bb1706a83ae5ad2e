import type { LoadedAircraft, Station } from '../../record/visit.ts';

/**
 * Returns the stations whose load counts to the mass of the non-lifting parts: all but tanks for water, unless the
 * record says otherwise.
 *
 * @source common practice, no source; manuals differ on ballast in the fin, so the record may state each station
 */
export function nonLiftingStations({ stations }: Pick<LoadedAircraft, 'stations'>): Station[] {
  return stations.filter(({ isNonLifting, kind }) => isNonLifting ?? kind !== 'water');
}
