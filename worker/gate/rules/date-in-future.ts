import { instantOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const dateInFuture: Rule = {
  code: 'DATE_IN_FUTURE',
  severity: 'blocks',
  meaning: 'The record dates something after the present moment',
  remedy: phrase`Correct the date`,
  source: PRACTICE,
  check: ({ moments, at, say }) =>
    moments
      .filter((stated) => instantOf(stated.at) > instantOf(at))
      .map((stated) => ({
        path: stated.path,
        sentence: say.words`The ${stated.what} is dated ${say.moment(stated.at)}, which is still to come`,
        data: { stated: stated.at, at },
      })),
};
