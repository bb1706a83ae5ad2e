import { cardDeviationDeg } from '../../../calc/compass/swing.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { DEVIATION_LIMIT_DEG } from '../../deviation-limit.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

const TARGET_DEG = 5;

export const deviationLarge: Rule = {
  code: 'DEVIATION_LARGE',
  severity: 'caution',
  meaning: 'The compass deviates more than after a good compensation',
  remedy: m.deviationLarge_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hitsIn(['compass', 'swings'], results.compass?.swings, ({ state, greatestDeviationDeg: readDeg, card }) => {
      const greatestDeviationDeg = Math.max(readDeg, ...card.map((line) => Math.abs(cardDeviationDeg(line))));
      if (isAtMost(greatestDeviationDeg, TARGET_DEG) || !isAtMost(greatestDeviationDeg, DEVIATION_LIMIT_DEG))
        return undefined;
      return {
        sentence: said(m.deviationLarge_deviationReaches, {
          greatestDeviation: figure.plain(greatestDeviationDeg, 1),
          state: termOf(state),
        }),
        data: { greatestDeviationDeg },
      };
    }),
};
