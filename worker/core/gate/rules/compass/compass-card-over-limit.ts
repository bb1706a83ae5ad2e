import { cardDeviationDeg } from '../../../calc/compass/swing.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { DEVIATION_LIMIT_DEG } from '../../deviation-limit.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const compassCardOverLimit: Rule = {
  code: 'COMPASS_CARD_OVER_LIMIT',
  severity: 'blocks',
  meaning: 'The card gives a deviation beyond the limit on a heading between those that were read',
  remedy: m.compassCardOverLimit_remedy,
  source: read('14 CFR 27.1327 and the former 23.1327, taken for the card too'),
  check: ({ results }) =>
    (results.compass?.swings ?? []).flatMap(({ state, card }, index) =>
      card.flatMap((line): Hit[] => {
        const deviationDeg = cardDeviationDeg(line);
        if (isAtMost(Math.abs(deviationDeg), DEVIATION_LIMIT_DEG)) return [];
        const [deviation, limit] = figure.plainApart(deviationDeg, DEVIATION_LIMIT_DEG, 0, { signed: true });
        return [
          {
            path: ['compass', 'swings', index, 'readings'],
            sentence: said(m.compassCardOverLimit_cardDeviationLimit, {
              deviation,
              for: figure.plain(line.forDeg, 0),
              state: termOf(state),
              limit,
            }),
            data: { headingDeg: line.forDeg, deviationDeg },
          },
        ];
      }),
    ),
};
