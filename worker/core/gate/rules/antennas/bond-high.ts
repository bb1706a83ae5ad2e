import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

const LIMIT_MILLIOHM = 2.5;

export const bondHigh: Rule = {
  code: 'BOND_HIGH',
  severity: 'caution',
  meaning: 'The resistance of the bond of an antenna to its ground plane is too high',
  remedy: m.bondHigh_remedy,
  source: read('AC 43.13-1B 11-188f: less than 2.5 milliohm'),
  check: ({ visit }) =>
    hitsIn(['antennas', 'items'], visit.antennas?.items, ({ name, bondMilliohm }) => {
      if (bondMilliohm === undefined || bondMilliohm < LIMIT_MILLIOHM) return undefined;
      const [valueText, limitText] = figure.plainApart(bondMilliohm, LIMIT_MILLIOHM, 1);
      return {
        field: 'bondMilliohm',
        sentence: said(m.bondHigh_bondMBelowM, { name, value: valueText, limit: limitText }),
        data: { bondMilliohm, limitMilliohm: LIMIT_MILLIOHM },
      };
    }),
};
