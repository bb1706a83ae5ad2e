import { type Hit, type Rule, read } from '../rule.ts';

const LEAST_HEADINGS = 8;

export const swingHeadingsTooFew: Rule = {
  code: 'SWING_HEADINGS_TOO_FEW',
  severity: 'caution',
  meaning: 'Too few headings were read for a card of every 30°',
  remedy: 'Read at least eight headings, evenly spread',
  source: read('former 23.1547 (card in steps of not more than 30°)'),
  check: ({ visit }) =>
    (visit.compass?.swings ?? []).flatMap(({ state, readings }, index): Hit[] =>
      readings.length >= LEAST_HEADINGS
        ? []
        : [
            {
              path: ['compass', 'swings', index, 'readings'],
              sentence: `Only ${readings.length} headings were read (${state})`,
              data: { readings: readings.length },
            },
          ],
    ),
};
