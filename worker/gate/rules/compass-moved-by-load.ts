import { printSigned } from '../../units/rounding.ts';
import { type Hit, type Rule, read } from '../rule.ts';

const NOTICED_DEG = 2;

export const compassMovedByLoad: Rule = {
  code: 'COMPASS_MOVED_BY_LOAD',
  severity: 'caution',
  meaning: 'A piece of equipment moves the compass when it is switched on',
  remedy: 'Name it on the card, or move it or its wires',
  source: read('former 23.1547 (loads that move it more than 10° are named)'),
  check: ({ results }) =>
    (results.compass?.loads ?? []).flatMap(({ name, shiftDeg }, index): Hit[] =>
      Math.abs(shiftDeg) <= NOTICED_DEG
        ? []
        : [
            {
              path: ['compass', 'loads', index],
              sentence: `${name} moves the compass by ${printSigned(shiftDeg, 1)}°`,
              data: { shiftDeg },
            },
          ],
    ),
};
