import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

const NOTICED_DEG = 2;

export const compassMovedByLoad: Rule = {
  code: 'COMPASS_MOVED_BY_LOAD',
  severity: 'caution',
  meaning: 'A piece of equipment moves the compass when it is switched on',
  remedy: m.compassMovedByLoad_remedy,
  source: read('former 23.1547 (loads that move it more than 10° are named)'),
  check: ({ results }) =>
    hitsIn(['compass', 'loads'], results.compass?.loads, ({ name, shiftDeg }) => {
      if (isAtMost(Math.abs(shiftDeg), NOTICED_DEG)) return undefined;
      return {
        sentence: said(m.compassMovedByLoad_movesCompass, { name, shift: figure.signed(shiftDeg, 1) }),
        data: { shiftDeg },
      };
    }),
};
