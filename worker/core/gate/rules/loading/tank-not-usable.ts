import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const tankNotUsable: Rule = {
  code: 'TANK_NOT_USABLE',
  severity: 'blocks',
  meaning: 'A tank has no arm, or its figures contradict each other',
  remedy: m.tankNotUsable_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.aircraft.stations.flatMap((station, index): Hit[] => {
      if (station.kind !== 'fuel') return [];
      const path = ['aircraft', 'stations', index];
      const volumes = (station.armByVolume ?? []).map(({ volumeL }) => volumeL);
      if (station.armMm === undefined && volumes.length === 0)
        return [
          {
            path,
            sentence: said(m.tankNotUsable_neitherArmNorTable, { station: station.name }),
            data: { station: station.id },
          },
        ];
      if (!(station.unusableL < station.capacityL))
        return [
          {
            path,
            sentence: said(m.tankNotUsable_unusableContentNotBelow, { station: station.name }),
            data: { station: station.id },
          },
        ];
      if (volumes.some((volume, step) => step > 0 && volume <= (volumes[step - 1] ?? 0)))
        return [
          {
            path: [...path, 'armByVolume'],
            sentence: said(m.tankNotUsable_tableArmsNotRise, { station: station.name }),
            data: { station: station.id },
          },
        ];
      return [];
    }),
};
