import { countNow } from '../../../calc/lives/counting.ts';
import { hoursOf } from '../../../calc/lives/total-hours.ts';
import { COUNTS } from '../../../record/counts.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits } from '../../hits.ts';
import { isOfWeighingAlone } from '../../of-weighing-alone.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const openItemUncounted: Rule = {
  code: 'OPEN_ITEM_UNCOUNTED',
  severity: 'blocks',
  meaning: 'An item from an earlier pack is due by hours or counts that are not in this record',
  remedy: m.openItemUncounted_remedy,
  source: PRACTICE,
  check: (input) => {
    // A release of the weighing only makes no statement on airworthiness.
    if (isOfWeighingAlone(input)) return undefined;
    const { visit, results } = input;
    return hits(results.open.held, ({ item = '', kind, text, until, of, counters }) => {
      // A finding that is only monitored does not bind.
      if (kind === 'watch') return undefined;
      const path = '/meters';
      const data = { item };
      if (until.hours !== undefined && hoursOf(visit, of) === undefined)
        return {
          path,
          sentence: said(m.openItemUncounted_comesDueHoursRecord, { item, text, of: termOf(of) }),
          data,
        };
      for (const counts of COUNTS) {
        const counter = counters?.find((each) => each.counts === counts) ?? { counts, of: 'airframe' };
        if (until[counts] === undefined || countNow(visit, counter) !== undefined) continue;
        if (counter.id === undefined)
          return { path, sentence: said(m.openItemUncounted_comesDueLandingsRecord, { item, text }), data };
        const values = { item, text, counts: termOf(counts), counter: counter.id };
        return { path, sentence: said(m.openItemUncounted_comesDueCounter, values), data };
      }
      return undefined;
    });
  },
};
