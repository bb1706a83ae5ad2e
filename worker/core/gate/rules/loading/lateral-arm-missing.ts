import type { Station } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type EntryHit, hits, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const lateralArmMissing: Rule = {
  code: 'LATERAL_ARM_MISSING',
  severity: 'blocks',
  meaning: 'Lateral limits hold, and a station, a weighing point or a changed item has no lateral arm',
  remedy: m.lateralArmMissing_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { aircraft, weighing } = visit;
    if (!aircraft.lateralEnvelope) return undefined;
    const hit = (name: string): EntryHit => ({
      field: 'lateralArm',
      sentence: said(m.lateralArmMissing_noLateralArm, { name }),
      data: { name },
    });
    return [
      ...hitsIn(['aircraft', 'stations'], aircraft.stations, (station) =>
        hasLateralArm(station) ? undefined : hit(station.name),
      ),
      ...hitsIn(['weighing', 'points'], weighing?.points, ({ name, lateralArmMm }) =>
        lateralArmMm === undefined ? hit(name) : undefined,
      ),
      ...hits(results.change.changes, ({ change, path }) => {
        const item = change.kind === 'replaced' ? change.by : change.kind === 'installed' ? change : undefined;
        return item && item.lateralArmMm === undefined
          ? { ...hit(item.name), path: [...path, ...(change.kind === 'replaced' ? ['by'] : []), 'lateralArm'] }
          : undefined;
      }),
    ];
  },
};

function hasLateralArm(station: Station): boolean {
  if (station.lateralArmMm !== undefined) return true;
  return 'capacityL' in station && (station.armByVolume ?? []).some(({ lateralArmMm }) => lateralArmMm !== undefined);
}
