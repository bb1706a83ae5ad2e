import { changedSinceKg } from '../../calc/history.ts';
import { isAtMost } from '../../calc/limit-met.ts';
import { addMonths, dateOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const reweighDue: Rule = {
  code: 'REWEIGH_DUE',
  severity: 'caution',
  meaning: 'The last weighing is old, or too much has changed since',
  remedy: phrase`Weigh the aircraft`,
  source: PRACTICE,
  check: ({ visit, results, regime, at, say }) => {
    const { schedule, prediction } = results;
    if (visit.weighing || !schedule || !prediction) return [];
    const hits: Hit[] = [];
    const years = regime.reweighYears.value;
    if (years !== null && schedule.weighedOn && addMonths(schedule.weighedOn, 12 * years) < dateOf(at)) {
      hits.push({
        path: ['baseline', 'weighedOn'],
        sentence: say.words`Last weighed ${say.date(schedule.weighedOn)}, more than ${years} years ago`,
        data: { weighedOn: schedule.weighedOn, years },
      });
    }
    const share = regime.reweighChangeShare.value;
    const movedKg = changedSinceKg(schedule.history, schedule.weighedOn);
    if (share !== null && !isAtMost(movedKg, share * prediction.baseline.massKg)) {
      hits.push({
        path: ['modifications'],
        sentence: say.words`Changes of ${say.measure('mass', movedKg)} since the weighing are more than ${say.plain(share * 100, 1)} % of the empty mass`,
        data: { movedKg, share },
      });
    }
    return hits;
  },
};
