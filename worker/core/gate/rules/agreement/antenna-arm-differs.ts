import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import type { EquipmentKind } from '../../../record/equipment-kind.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Centre of mass and base of an antenna with plane and cable lie this far apart, at most. */
const APART_MM = 100;

const ANTENNAS: ReadonlySet<EquipmentKind | undefined> = new Set<EquipmentKind>([
  'transmitting-antenna',
  'receiving-antenna',
]);

export const antennaArmDiffers: Rule = {
  code: 'ANTENNA_ARM_DIFFERS',
  severity: 'caution',
  meaning: 'The arm of an antenna is more than 100 mm from the arm of its item in the equipment list',
  remedy: m.antennaArmDiffers_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const antennas = visit.antennas?.items ?? [];
    return hitsIn(['antennas', 'items'], antennas, ({ name, item, position }) => {
      const listed = results.change.after.find(({ id }) => id === item);
      const isAlone = antennas.filter((other) => other.item === item).length === 1;
      if (!listed || !ANTENNAS.has(listed.equipmentKind) || !isAlone) return undefined;
      if (isAtMost(Math.abs(position.armMm - listed.armMm), APART_MM)) return undefined;
      return {
        field: ['position', 'arm'],
        sentence: said(m.antennaArmDiffers_armsDiffer, {
          name,
          arm: figure.measure('arm', position.armMm),
          item: listed.id,
          listed: figure.measure('arm', listed.armMm),
        }),
        data: { armMm: position.armMm, listedMm: listed.armMm },
      };
    });
  },
};
