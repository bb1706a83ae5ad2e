import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const tankNotUsable: Rule = {
  code: 'TANK_NOT_USABLE',
  severity: 'blocks',
  meaning: 'A tank has no arm, or its figures contradict each other',
  remedy: phrase`Give one arm or a rising table, and an unusable content below the capacity`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    visit.aircraft.stations.flatMap((station, index): Hit[] => {
      if (station.kind !== 'fuel') return [];
      const path = ['aircraft', 'stations', index];
      const volumes = (station.armByVolume ?? []).map(({ volumeL }) => volumeL);
      if (station.armMm === undefined && volumes.length === 0)
        return [
          {
            path,
            sentence: say.words`${station.name} has neither an arm nor a table of arms`,
            data: { station: station.id },
          },
        ];
      if (!(station.unusableL < station.capacityL))
        return [
          {
            path,
            sentence: say.words`${station.name}: the unusable content is not below the capacity`,
            data: { station: station.id },
          },
        ];
      if (volumes.some((volume, step) => step > 0 && volume <= (volumes[step - 1] ?? 0)))
        return [
          {
            path: [...path, 'armByVolume'],
            sentence: say.words`${station.name}: the table of arms does not rise`,
            data: { station: station.id },
          },
        ];
      return [];
    }),
};
