import { greatestGapDeg, OPEN_GAP_DEG } from '../../calc/compass/coverage.ts';
import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const swingNotRound: Rule = {
  code: 'SWING_NOT_ROUND',
  severity: 'blocks',
  meaning: 'The headings of a swing do not go round the circle, so that no card follows from them',
  remedy: phrase`Read at least eight headings, evenly spread`,
  source: PRACTICE,
  check: ({ results, say }) =>
    (results.compass?.swings ?? []).flatMap(({ state, readings }, index): Hit[] => {
      const gapDeg = greatestGapDeg(readings.map(({ headingDeg }) => headingDeg));
      if (isAtMost(gapDeg, OPEN_GAP_DEG)) return [];
      const [gap, most] = say.plainApart(gapDeg, OPEN_GAP_DEG, 0);
      return [
        {
          path: ['compass', 'swings', index, 'readings'],
          sentence: say.words`The headings leave a gap of ${gap}° (${say.term(state)}); a card allows ${most}°`,
          data: { gapDeg },
        },
      ];
    }),
};
