import { hasOil } from '../../../calc/weighing/oil.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Rule, read } from '../../rule.ts';

export const oilStateUnstated: Rule = {
  code: 'OIL_STATE_UNSTATED',
  severity: 'blocks',
  meaning: 'The oil aboard at the weighing is not recorded',
  remedy: m.oilStateUnstated_remedy,
  source: read('AC 43.13-1B ch. 10 (oil convention)'),
  check: ({ visit }) => {
    const { weighing } = visit;
    if (!weighing || !hasOil(visit.aircraft)) return undefined;
    if (weighing.oilState === undefined)
      return { path: ['weighing', 'oilState'], sentence: said(m.oilStateUnstated_weighingNotSayWhether) };
    const added = (weighing.itemsMissing ?? []).some(({ isOil }) => isOil);
    if (weighing.oilState === 'full' || added) return undefined;
    return {
      path: ['weighing', 'itemsMissing'],
      sentence: said(m.oilStateUnstated_oilStateButNo, { oilState: termOf(weighing.oilState) }),
    };
  },
};
