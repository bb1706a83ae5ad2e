import { unusableOf } from '../../calc/loading/fuel.ts';
import { MAX, MIN } from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { bothSystems } from './both-systems.ts';
import { stationLateralText } from './station-lateral.ts';

/** Returns the stations of the aircraft as printed: name, arm, limits. */
export function stationRows({ visit, fmt }: PackContext): View[] {
  return visit.aircraft.stations.map((station) => {
    if ('capacityL' in station) {
      const table = station.armByVolume ?? [];
      const first = table[0];
      const last = table.at(-1);
      const arm =
        first && last
          ? fmt.text(m.to, { text: fmt.number('arm', first.armMm), text2: fmt.number('arm', last.armMm) })
          : fmt.number('arm', station.armMm ?? 0);
      return {
        name: fmt.text(station.kind === 'fuel' ? m.stationRows_usable : m.stationRows_water, {
          station: station.name,
          densityKgPerL: fmt.measure('density', station.densityKgPerL),
        }),
        arm,
        lateral: stationLateralText(fmt, station),
        least: bothSystems(fmt, 'mass', undefined),
        most: bothSystems(fmt, 'volume', station.capacityL - unusableOf(station), MAX),
      };
    }
    return {
      name: station.name,
      arm: fmt.number('arm', station.armMm),
      lateral: stationLateralText(fmt, station),
      least: bothSystems(fmt, 'mass', station.minimumMassKg, MIN),
      most: bothSystems(fmt, 'mass', station.maximumMassKg, MAX),
    };
  });
}
