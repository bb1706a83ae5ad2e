import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const cableLossHigh: Rule = {
  code: 'CABLE_LOSS_HIGH',
  severity: 'caution',
  meaning: 'The feed of an antenna loses more than the equipment allows',
  remedy: m.cableLossHigh_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hitsIn(['antennas', 'items'], visit.antennas?.items, ({ name, cable }, index) => {
      const lossDb = results.antennas?.antennas[index]?.cableLossDb;
      if (lossDb === undefined || cable?.limitDb === undefined || isAtMost(lossDb, cable.limitDb)) return undefined;
      const [lossText, limitText] = figure.plainApart(lossDb, cable.limitDb, 2);
      return {
        field: 'cable',
        sentence: said(m.cableLossHigh_feedLosesDbLimit, { name, loss: lossText, limit: limitText }),
        data: { lossDb, limitDb: cable.limitDb },
      };
    }),
};
