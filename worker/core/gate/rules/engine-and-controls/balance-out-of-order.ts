import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { instantOf } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const balanceOutOfOrder: Rule = {
  code: 'BALANCE_OUT_OF_ORDER',
  severity: 'blocks',
  meaning: 'A balance measured after the work is older than the one measured before it',
  remedy: m.balanceOutOfOrder_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const balances = visit.measurements?.balances;
    return hitsIn(['measurements', 'balances'], balances, ({ of, when, at }) => {
      const isLater = balances?.some(
        (other) => other.of === of && other.when === 'before' && instantOf(other.at) > instantOf(at),
      );
      return when === 'after' && isLater
        ? { field: 'at', sentence: said(m.balanceOutOfOrder_afterIsOlder, { of: termOf(of) }), data: { of } }
        : undefined;
    });
  },
};
