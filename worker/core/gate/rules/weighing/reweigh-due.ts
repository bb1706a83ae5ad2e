import { changedSinceKg } from '../../../calc/mass/history.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { addMonths, dateOf } from '../../../units/calendar.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const reweighDue: Rule = {
  code: 'REWEIGH_DUE',
  severity: 'caution',
  meaning: 'The last weighing is too old, or too much has changed since',
  remedy: m.reweighDue_remedy,
  source: PRACTICE,
  check: ({ visit, results, regime, at }) => {
    const { schedule, prediction } = results;
    if (visit.weighing || !schedule || !prediction) return undefined;
    const hits: Hit[] = [];
    const years = regime.reweighYears.value;
    if (years !== null && schedule.weighedOn && addMonths(schedule.weighedOn, 12 * years) < dateOf(at)) {
      hits.push({
        path: ['baseline', 'weighedOn'],
        sentence: said(m.reweighDue_lastWeighedMoreThan, { weighedOn: figure.date(schedule.weighedOn), years }),
        data: { weighedOn: schedule.weighedOn, years },
      });
    }
    const share = regime.reweighChangeShare.value;
    const converting = new Set(
      (visit.modifications ?? []).filter(({ convertsTo }) => convertsTo !== undefined).map(({ id }) => id),
    );
    // A change to another configuration is known by its kit: it does not count as creep.
    const counted = schedule.history.filter(
      ({ cause }) => cause.kind !== 'modification' || !converting.has(cause.modification),
    );
    const movedKg = changedSinceKg(counted, schedule.weighedOn);
    if (share !== null && !isAtMost(movedKg, share * prediction.baseline.massKg)) {
      hits.push({
        path: ['modifications'],
        sentence: said(m.reweighDue_changesSinceWeighingMore, {
          moved: figure.measure('mass', movedKg),
          share: figure.plain(share * 100, 1),
        }),
        data: { movedKg, share },
      });
    }
    return hits;
  },
};
