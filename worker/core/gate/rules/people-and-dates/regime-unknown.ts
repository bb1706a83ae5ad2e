import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { REGIMES } from '../../regimes/table.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const regimeUnknown: Rule = {
  code: 'REGIME_UNKNOWN',
  severity: 'blocks',
  meaning: 'The regime in the record is unknown',
  remedy: m.regimeUnknown_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { regime } = visit.aircraft;
    if (REGIMES.some(({ id }) => id === regime)) return undefined;
    return {
      path: ['aircraft', 'regime'],
      sentence: said(m.regimeUnknown_regimeNotKnownKnown, {
        regime,
        regimes: REGIMES.map(({ id }) => id).join(', '),
      }),
      data: { regime },
    };
  },
};
