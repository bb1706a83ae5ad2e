import { instantOf, printMoment } from '../../units/calendar.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const datesOutOfOrder: Rule = {
  code: 'DATES_OUT_OF_ORDER',
  severity: 'blocks',
  meaning: 'Something is dated before the aircraft arrived or after the work had ended',
  remedy: 'Correct the date, or the arrival or end of work',
  source: PRACTICE,
  check: ({ visit, moments }) => {
    const { arrivedAt, workEndedAt } = visit.visit;
    return moments.flatMap(({ what, at, path }): Hit[] => {
      if (instantOf(at) < instantOf(arrivedAt)) {
        return [
          {
            path,
            sentence: `The ${what} is dated ${printMoment(at)}, before the arrival ${printMoment(arrivedAt)}`,
            data: { stated: at },
          },
        ];
      }
      if (workEndedAt !== undefined && instantOf(at) > instantOf(workEndedAt)) {
        return [
          {
            path,
            sentence: `The ${what} is dated ${printMoment(at)}, after the end of work ${printMoment(workEndedAt)}`,
            data: { stated: at },
          },
        ];
      }
      return [];
    });
  },
};
