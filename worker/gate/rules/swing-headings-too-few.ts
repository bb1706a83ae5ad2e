import { greatestGapDeg, OPEN_GAP_DEG, WIDE_GAP_DEG } from '../../calc/compass/coverage.ts';
import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

const LEAST_HEADINGS = 8;

export const swingHeadingsTooFew: Rule = {
  code: 'SWING_HEADINGS_TOO_FEW',
  severity: 'caution',
  meaning: 'Too few headings were read for a card of every 30°, or they leave a wide gap',
  remedy: phrase`Read at least eight headings, evenly spread`,
  source: read('former 23.1547 (card in steps of not more than 30°)'),
  check: ({ results, say }) =>
    (results.compass?.swings ?? []).flatMap(({ state, readings }, index): Hit[] => {
      const path = ['compass', 'swings', index, 'readings'];
      if (readings.length < LEAST_HEADINGS)
        return [
          {
            path,
            sentence: say.words`Only ${readings.length} headings were read (${say.term(state)})`,
            data: { readings: readings.length },
          },
        ];
      const gapDeg = greatestGapDeg(readings.map(({ headingDeg }) => headingDeg));
      return isAtMost(gapDeg, WIDE_GAP_DEG) || !isAtMost(gapDeg, OPEN_GAP_DEG)
        ? []
        : [
            {
              path,
              sentence: say.words`No heading was read over ${say.plain(gapDeg, 0)}° of the circle (${say.term(state)})`,
              data: { gapDeg },
            },
          ];
    }),
};
