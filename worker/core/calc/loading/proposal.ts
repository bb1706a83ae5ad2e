import type { LoadedAircraft, LoadStation } from '../../record/visit.ts';
import { lastInside } from '../numbers/last-inside.ts';
import type { Envelope } from './envelope.ts';
import { areAllInside } from './extremes.ts';
import { boundsOf, isBaggagePlace, isSeat, type LoadSpaceOptions, loadStationsOf } from './load-space.ts';
import type { GroupProposal } from './loading-result.ts';

/** Resolution of a proposed limit, in kg: below any printed digit. */
const CLOSE_KG = 1e-4;

/** Most groups that are tried, so that an aircraft with many places does not take long. */
const MAX_GROUPS = 14;

/**
 * Returns joint limits, each of which alone would keep every permitted loading inside the envelope: the max.
 * total of one group of places. Empty if every loading is inside already, or if no single group helps.
 *
 * @source our own search; each result is checked by the exact extremes with that limit
 */
export function groupProposals(
  aircraft: LoadedAircraft,
  options: LoadSpaceOptions,
  envelope: Envelope,
): GroupProposal[] {
  const isInside = (stations: readonly string[], maximumMassKg: number): boolean => {
    const limit = { id: PROPOSED, text: PROPOSED, stations: [...stations], maximumMassKg };
    const limited = { ...aircraft, loadingLimits: [...(aircraft.loadingLimits ?? []), limit] };
    return areAllInside(limited, options, envelope);
  };
  return groupsOf(aircraft)
    .slice(0, MAX_GROUPS)
    .flatMap((group): GroupProposal[] => {
      const stations = group.map(({ id }) => id);
      const leastKg = group.reduce((sum, each) => sum + boundsOf(each, options.leastPilotKg).minimumKg, 0);
      const mostKg = group.reduce((sum, { maximumMassKg }) => sum + maximumMassKg, 0);
      if (!isInside(stations, leastKg)) return [];
      const maximumKg = lastInside((kg) => isInside(stations, kg), leastKg, Math.max(leastKg, mostKg), CLOSE_KG);
      return [{ stations, maximumKg }];
    })
    .sort((a, b) => b.maximumKg - a.maximumKg);
}

const PROPOSED = 'proposed';

/** Groups that a workshop would limit: baggage together, seats behind the pilot with it, both seats, every single place. */
function groupsOf(aircraft: LoadedAircraft): LoadStation[][] {
  const places = loadStationsOf(aircraft);
  const baggage = places.filter(isBaggagePlace);
  const passengers = places.filter(({ kind }) => kind === 'passenger');
  const groups = [
    baggage,
    [...passengers, ...baggage],
    places.filter(isSeat),
    places.filter((place) => isSeat(place) || isBaggagePlace(place)),
    ...places.map((place) => [place]),
  ];
  const seen = new Set<string>();
  return groups.filter((group) => {
    const key = group
      .map(({ id }) => id)
      .sort()
      .join('\n');
    return group.length > 0 && seen.size < seen.add(key).size;
  });
}
