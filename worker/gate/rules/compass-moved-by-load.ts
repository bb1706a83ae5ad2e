import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

const NOTICED_DEG = 2;

export const compassMovedByLoad: Rule = {
  code: 'COMPASS_MOVED_BY_LOAD',
  severity: 'caution',
  meaning: 'A piece of equipment moves the compass when it is switched on',
  remedy: phrase`Name it on the card, or move it or its wires`,
  source: read('former 23.1547 (loads that move it more than 10° are named)'),
  check: ({ results, say }) =>
    (results.compass?.loads ?? []).flatMap(({ name, shiftDeg }, index): Hit[] =>
      isAtMost(Math.abs(shiftDeg), NOTICED_DEG)
        ? []
        : [
            {
              path: ['compass', 'loads', index],
              sentence: say.words`${name} moves the compass by ${say.signed(shiftDeg, 1)}°`,
              data: { shiftDeg },
            },
          ],
    ),
};
