import { cardDeviationDeg } from '../../../calc/compass/swing.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { DEVIATION_LIMIT_DEG } from '../../deviation-limit.ts';
import { hits, hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const compassCardOverLimit: Rule = {
  code: 'COMPASS_CARD_OVER_LIMIT',
  severity: 'blocks',
  meaning: 'The compass card exceeds the deviation limit on a heading between those that were read',
  remedy: m.compassCardOverLimit_remedy,
  source: read('14 CFR 27.1327 and the former 23.1327, taken for the card too'),
  check: ({ results }) =>
    hitsIn(['compass', 'swings'], results.compass?.swings, ({ state, card }) =>
      hits(card, (line) => {
        const deviationDeg = cardDeviationDeg(line);
        if (isAtMost(Math.abs(deviationDeg), DEVIATION_LIMIT_DEG)) return undefined;
        const [deviation, limit] = figure.plainApart(deviationDeg, DEVIATION_LIMIT_DEG, 0, { signed: true });
        return {
          field: 'readings',
          sentence: said(m.compassCardOverLimit_cardDeviationLimit, {
            deviation,
            for: figure.plain(line.forDeg, 0),
            state: termOf(state),
            limit,
          }),
          data: { headingDeg: line.forDeg, deviationDeg },
        };
      }),
    ),
};
