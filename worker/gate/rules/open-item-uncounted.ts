import { hoursOf } from '../../calc/total-hours.ts';
import { phrase } from '../../words/words.ts';
import { isOfWeighingAlone } from '../of-weighing-alone.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const openItemUncounted: Rule = {
  code: 'OPEN_ITEM_UNCOUNTED',
  severity: 'blocks',
  meaning: 'Something that an earlier pack left open comes due by hours or landings that this record does not give',
  remedy: phrase`Read the meter, or give the landings`,
  source: PRACTICE,
  check: (input) => {
    // A weighing says nothing of airworthiness.
    if (isOfWeighingAlone(input)) return [];
    const { visit, results, say } = input;
    return results.open.held.flatMap(({ item = '', text, until, of }): Hit[] => {
      const path = '/meters';
      const data = { item };
      if (until.hours !== undefined && hoursOf(visit, of) === undefined)
        return [
          {
            path,
            sentence: say.words`${item}, “${text}”, comes due by hours, and this record reads no meter of the ${say.term(of)}`,
            data,
          },
        ];
      return until.landings !== undefined && visit.meters?.landings === undefined
        ? [{ path, sentence: say.words`${item}, “${text}”, comes due by landings, and this record has none`, data }]
        : [];
    });
  },
};
