import { unusableOf } from '../../../calc/loading/fuel.ts';
import { sharedX } from '../../../calc/numbers/interpolate.ts';
import type { WaterStation } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const tankNotUsable: Rule = {
  code: 'TANK_NOT_USABLE',
  severity: 'blocks',
  meaning: 'A tank has no arm, or its figures contradict each other',
  remedy: m.tankNotUsable_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['aircraft', 'stations'], visit.aircraft.stations, (station) => {
      if (!('capacityL' in station)) return undefined;
      const { name, armMm, armByVolume = [], capacityL } = station;
      const data = { station: station.id };
      if (armMm === undefined && armByVolume.length === 0)
        return { sentence: said(m.tankNotUsable_neitherArmNorTable, { station: name }), data };
      if (!(unusableOf(station) < capacityL))
        return { sentence: said(m.tankNotUsable_unusableContentNotBelow, { station: name }), data };
      const rises = armByVolume.slice(1).every(({ volumeL }, step) => volumeL > (armByVolume[step]?.volumeL ?? 0));
      if (!rises)
        return { field: 'armByVolume', sentence: said(m.tankNotUsable_tableArmsNotRise, { station: name }), data };
      if (station.kind !== 'water' || !contradictsItself(station)) return undefined;
      return { field: 'matched', sentence: said(m.tankNotUsable_matchedAmbiguous, { station: name }), data };
    }),
};

/** Whether a table of matched ballast gives two masses for one content, or counts the tank itself. */
function contradictsItself({ id, matched }: WaterStation): boolean {
  if (!matched) return false;
  return matched.to.includes(id) || sharedX(matched.table, ({ massKg }) => massKg) !== undefined;
}
