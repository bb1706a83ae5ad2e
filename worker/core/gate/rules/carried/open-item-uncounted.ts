import { hoursOf } from '../../../calc/lives/total-hours.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { isOfWeighingAlone } from '../../of-weighing-alone.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const openItemUncounted: Rule = {
  code: 'OPEN_ITEM_UNCOUNTED',
  severity: 'blocks',
  meaning: 'Something that an earlier pack left open comes due by hours or landings that this record does not give',
  remedy: m.openItemUncounted_remedy,
  source: PRACTICE,
  check: (input) => {
    // A weighing says nothing of airworthiness.
    if (isOfWeighingAlone(input)) return [];
    const { visit, results } = input;
    return results.open.held.flatMap(({ item = '', text, until, of }): Hit[] => {
      const path = '/meters';
      const data = { item };
      if (until.hours !== undefined && hoursOf(visit, of) === undefined)
        return [
          {
            path,
            sentence: said(m.openItemUncounted_comesDueHoursRecord, { item, text, of: termOf(of) }),
            data,
          },
        ];
      return until.landings !== undefined && visit.meters?.landings === undefined
        ? [{ path, sentence: said(m.openItemUncounted_comesDueLandingsRecord, { item, text }), data }]
        : [];
    });
  },
};
