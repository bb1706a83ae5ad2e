import { cardDeviationDeg } from '../../calc/compass/swing.ts';
import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { DEVIATION_LIMIT_DEG } from '../deviation-limit.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

const TARGET_DEG = 5;

export const deviationLarge: Rule = {
  code: 'DEVIATION_LARGE',
  severity: 'caution',
  meaning: 'The compass deviates more than a good compensation leaves',
  remedy: phrase`Compensate it`,
  source: PRACTICE,
  check: ({ results, say }) =>
    (results.compass?.swings ?? []).flatMap(({ state, greatestDeviationDeg: readDeg, card }, index): Hit[] => {
      const greatestDeviationDeg = Math.max(readDeg, ...card.map((line) => Math.abs(cardDeviationDeg(line))));
      if (isAtMost(greatestDeviationDeg, TARGET_DEG) || !isAtMost(greatestDeviationDeg, DEVIATION_LIMIT_DEG)) return [];
      return [
        {
          path: ['compass', 'swings', index],
          sentence: say.words`Deviation reaches ${say.plain(greatestDeviationDeg, 1)}° (${say.term(state)})`,
          data: { greatestDeviationDeg },
        },
      ];
    }),
};
