import { wrap360 } from '../../units/angle.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

const LEAST_HEADINGS = 8;
/** Two of eight even steps: one heading of them may be missing where more were read elsewhere. */
const GREATEST_GAP_DEG = 90;

export const swingHeadingsTooFew: Rule = {
  code: 'SWING_HEADINGS_TOO_FEW',
  severity: 'caution',
  meaning: 'Too few headings were read for a card of every 30°, or they leave a wide gap',
  remedy: phrase`Read at least eight headings, evenly spread`,
  source: read('former 23.1547 (card in steps of not more than 30°)'),
  check: ({ visit, say }) =>
    (visit.compass?.swings ?? []).flatMap(({ state, readings }, index): Hit[] => {
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
      return gapDeg <= GREATEST_GAP_DEG
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

/** The widest part of the circle, in degrees, in which no heading lies. */
function greatestGapDeg(headingsDeg: readonly number[]): number {
  const sorted = headingsDeg.map(wrap360).sort((a, b) => a - b);
  return Math.max(...sorted.map((heading, index) => (sorted[index + 1] ?? (sorted[0] ?? 0) + 360) - heading));
}
