import { cardDeviationDeg } from '../../calc/compass/swing.ts';
import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { DEVIATION_LIMIT_DEG } from '../deviation-limit.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const compassCardOverLimit: Rule = {
  code: 'COMPASS_CARD_OVER_LIMIT',
  severity: 'blocks',
  meaning: 'The card gives a deviation beyond the limit on a heading between those that were read',
  remedy: phrase`Read more headings there; compensate the compass if they confirm it`,
  source: read('14 CFR 27.1327 and the former 23.1327, taken for the card too'),
  check: ({ results, say }) =>
    (results.compass?.swings ?? []).flatMap(({ state, card }, index) =>
      card.flatMap((line): Hit[] => {
        const deviationDeg = cardDeviationDeg(line);
        if (isAtMost(Math.abs(deviationDeg), DEVIATION_LIMIT_DEG)) return [];
        const [deviation, limit] = say.plainApart(deviationDeg, DEVIATION_LIMIT_DEG, 0, { signed: true });
        return [
          {
            path: ['compass', 'swings', index, 'readings'],
            sentence: say.words`Card: deviation ${deviation}° on ${say.plain(line.forDeg, 0)}° (${say.term(state)}); the limit is ${limit}°`,
            data: { headingDeg: line.forDeg, deviationDeg },
          },
        ];
      }),
    ),
};
