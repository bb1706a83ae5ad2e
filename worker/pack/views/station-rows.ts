import type { PackContext } from '../context.ts';
import { DASH } from '../people.ts';

/** The stations of the aircraft as printed: name, arm, limits. */
export function stationRows({ visit, say }: PackContext): Record<string, string>[] {
  return visit.aircraft.stations.map((station) => {
    if (station.kind === 'fuel') {
      const table = station.armByVolume ?? [];
      const first = table[0];
      const last = table.at(-1);
      const arm =
        first && last
          ? say.words`${say.number('arm', first.armMm)} to ${say.number('arm', last.armMm)}`
          : say.number('arm', station.armMm ?? 0);
      const usable = say.measure('volume', station.capacityL - station.unusableL);
      return {
        name: station.name,
        arm,
        least: DASH,
        most: say.words`${usable} usable at ${say.measure('density', station.densityKgPerL)}`,
      };
    }
    return {
      name: station.name,
      arm: say.number('arm', station.armMm),
      least: station.minimumMassKg === undefined ? DASH : say.measure('mass', station.minimumMassKg),
      most: say.measure('mass', station.maximumMassKg),
    };
  });
}
