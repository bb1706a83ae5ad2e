import { dateOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const baselineInFuture: Rule = {
  code: 'BASELINE_IN_FUTURE',
  severity: 'blocks',
  meaning: 'The baseline is dated after the aircraft arrived',
  remedy: phrase`Give the schedule that held on arrival`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const { baseline } = visit;
    const arrived = dateOf(visit.visit.arrivedAt);
    if (!baseline || baseline.date <= arrived) return [];
    return [
      {
        path: ['baseline', 'date'],
        sentence: say.words`The baseline is dated ${say.date(baseline.date)}, after the arrival ${say.date(arrived)}`,
        data: { date: baseline.date },
      },
    ];
  },
};
