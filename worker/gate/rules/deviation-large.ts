import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

const TARGET_DEG = 5;

export const deviationLarge: Rule = {
  code: 'DEVIATION_LARGE',
  severity: 'caution',
  meaning: 'The compass deviates more than a good compensation leaves',
  remedy: phrase`Compensate it`,
  source: PRACTICE,
  check: ({ results, say }) =>
    (results.compass?.swings ?? []).flatMap(({ state, greatestDeviationDeg }, index): Hit[] =>
      isAtMost(greatestDeviationDeg, TARGET_DEG) || !isAtMost(greatestDeviationDeg, 10)
        ? []
        : [
            {
              path: ['compass', 'swings', index],
              sentence: say.words`Deviation reaches ${say.plain(greatestDeviationDeg, 1)}° (${say.term(state)})`,
              data: { greatestDeviationDeg },
            },
          ],
    ),
};
