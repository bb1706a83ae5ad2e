import { dateOf, printDate } from '../../units/calendar.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const baselineInFuture: Rule = {
  code: 'BASELINE_IN_FUTURE',
  severity: 'blocks',
  meaning: 'The baseline is dated after the aircraft arrived',
  remedy: 'Give the schedule that held on arrival',
  source: PRACTICE,
  check: ({ visit }) => {
    const { baseline } = visit;
    const arrived = dateOf(visit.visit.arrivedAt);
    if (!baseline || baseline.date <= arrived) return [];
    return [
      {
        path: ['baseline', 'date'],
        sentence: `The baseline is dated ${printDate(baseline.date)}, after the arrival ${printDate(arrived)}`,
        data: { date: baseline.date },
      },
    ];
  },
};
