import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

const LIMIT_MILLIOHM = 2.5;

export const bondHigh: Rule = {
  code: 'BOND_HIGH',
  severity: 'caution',
  meaning: 'The bond of an antenna to its ground plane resists too much',
  remedy: m.bondHigh_remedy,
  source: read('AC 43.13-1B 11-188f: less than 2.5 milliohm'),
  check: ({ visit }) =>
    (visit.antennas?.items ?? []).flatMap(({ name, bondMilliohm }, index): Hit[] => {
      if (bondMilliohm === undefined || bondMilliohm < LIMIT_MILLIOHM) return [];
      const [valueText, limitText] = figure.plainApart(bondMilliohm, LIMIT_MILLIOHM, 1);
      return [
        {
          path: ['antennas', 'items', index, 'bondMilliohm'],
          sentence: said(m.bondHigh_bondMBelowM, { name, value: valueText, limit: limitText }),
          data: { bondMilliohm, limitMilliohm: LIMIT_MILLIOHM },
        },
      ];
    }),
};
