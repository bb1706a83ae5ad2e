import { instantOf, printMoment } from '../../units/calendar.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const dateInFuture: Rule = {
  code: 'DATE_IN_FUTURE',
  severity: 'blocks',
  meaning: 'The record dates something after the present moment',
  remedy: 'Correct the date',
  source: PRACTICE,
  check: ({ moments, at }) =>
    moments
      .filter((stated) => instantOf(stated.at) > instantOf(at))
      .map((stated) => ({
        path: stated.path,
        sentence: `The ${stated.what} is dated ${printMoment(stated.at)}, which is still to come`,
        data: { stated: stated.at, at },
      })),
};
