import { phrase } from '../../words/words.ts';
import { rangeText } from '../range-text.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const engineLimitExceeded: Rule = {
  code: 'ENGINE_LIMIT_EXCEEDED',
  severity: 'blocks',
  meaning: 'An instrument was outside its limits after the work',
  remedy: phrase`Find the cause and run again`,
  source: read('14 CFR 43.15(c) as summarised; limits from the record'),
  check: ({ results, say }) =>
    results.engineRuns.flatMap(({ name, unit, after, least, most, isWithin }): Hit[] =>
      isWithin || after === undefined
        ? []
        : [
            {
              path: ['engineRuns'],
              sentence: say.words`${name}: ${say.asIs(after)} ${unit} is outside its limits ${rangeText({ least, most }, say)}`,
              data: { name, after },
            },
          ],
    ),
};
