import type { Change } from '../../../record/visit.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { type Rule, read } from '../../rule.ts';

export const compassSwingOwed: Rule = {
  code: 'COMPASS_SWING_OWED',
  severity: 'blocks',
  meaning: 'Electrical equipment near the compass changed, and the compass was not swung since',
  remedy: m.compassSwingOwed_remedy,
  source: read('AC 43.13-1B para 12-37 (a swing is due after a change of the electrical system)'),
  check: ({ visit }) => {
    const changed = (visit.modifications ?? []).filter(({ changes }) => changes.some(isElectrical));
    const last = changed
      .map(({ finishedAt }) => finishedAt)
      .sort((a, b) => instantOf(a) - instantOf(b))
      .at(-1);
    if (!visit.electrical && !visit.wiring && !visit.surveillance) return undefined;
    if (last === undefined || (visit.compass && instantOf(visit.compass.swungAt) >= instantOf(last))) return undefined;
    return {
      path: ['compass'],
      sentence: said(m.compassSwingOwed_equipmentChangedUntilCompass, { last: figure.timestamp(last) }),
      data: { last },
    };
  },
};

/** Whether equipment was installed or moved: on a small aircraft all of it is near the compass. */
function isElectrical({ kind }: Change): boolean {
  return kind !== 'removed' && kind !== 'updated';
}
