import type { Loading } from '../calc/loading/boundary.ts';
import { usableFuel } from '../calc/loading/fuel.ts';
import type { Station, Visit } from '../record/visit.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { list, said, type Value } from '../text/message.ts';

/**
 * Describes a loading: the load of each station that is not empty. Rounding never puts a load outside the limits of its station.
 *
 * @param leastPilotKg min. solo pilot mass; a pilot of this mass or more is never rounded below it
 * @example 'Left seat 55.0 kg, Baggage 20.0 kg, Main tank 14.4 kg of usable fuel'
 */
export function describeLoading(visit: Visit, { load }: Loading, leastPilotKg = 0): Value {
  const massOn = (station: Station): Value => {
    const loadKg = load[station.id] ?? 0;
    const isAlone = station.kind === 'pilot' && loadKg >= leastPilotKg;
    const { minimumKg, maximumKg } = limitsOn(station);
    const limits = { least: isAlone ? Math.max(minimumKg, leastPilotKg) : minimumKg, most: maximumKg };
    return figure.measure('mass', loadKg, { within: limits });
  };
  const parts = visit.aircraft.stations
    .filter(({ id }) => (load[id] ?? 0) > 0)
    .map((station) =>
      station.kind === 'fuel'
        ? said(m.describeLoading_usableFuel, { station: station.name, massOn: massOn(station) })
        : said(m.describeLoading_load, { station: station.name, mass: massOn(station) }),
    );
  return parts.length > 0 ? list(parts) : said(m.describeLoading_nothingAboard);
}

function limitsOn(station: Station): { minimumKg: number; maximumKg: number } {
  if ('capacityL' in station)
    return { minimumKg: 0, maximumKg: Math.max(0, usableFuel(station, station.capacityL).massKg) };
  return {
    minimumKg: (station.kind === 'pilot' ? station.minimumMassKg : undefined) ?? 0,
    maximumKg: station.maximumMassKg,
  };
}
