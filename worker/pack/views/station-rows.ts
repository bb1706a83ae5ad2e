import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { bothSystems } from './both-systems.ts';

/** The stations of the aircraft as printed: name, arm, limits. */
export function stationRows({ visit, say }: PackContext): View[] {
  return visit.aircraft.stations.map((station) => {
    if (station.kind === 'fuel') {
      const table = station.armByVolume ?? [];
      const first = table[0];
      const last = table.at(-1);
      const arm =
        first && last
          ? say.text(m.to, { text: say.number('arm', first.armMm), text2: say.number('arm', last.armMm) })
          : say.number('arm', station.armMm ?? 0);
      return {
        name: say.text(m.stationRows_usable, {
          station: station.name,
          densityKgPerL: say.measure('density', station.densityKgPerL),
        }),
        arm,
        least: bothSystems(say, 'mass', undefined),
        most: bothSystems(say, 'volume', station.capacityL - station.unusableL, { bound: 'most' }),
      };
    }
    return {
      name: station.name,
      arm: say.number('arm', station.armMm),
      least: bothSystems(say, 'mass', station.minimumMassKg, { bound: 'least' }),
      most: bothSystems(say, 'mass', station.maximumMassKg, { bound: 'most' }),
    };
  });
}
