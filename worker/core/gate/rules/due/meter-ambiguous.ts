import { countersFor } from '../../../calc/lives/counting.ts';
import { countedBy, productNamed } from '../../../calc/lives/product-time.ts';
import type { OpenItem } from '../../../calc/open-items/open-item.ts';
import type { Results } from '../../../calc/results.ts';
import { COUNTS } from '../../../record/counts.ts';
import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits, hitsIn } from '../../hits.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const meterAmbiguous: Rule = {
  code: 'METER_AMBIGUOUS',
  severity: 'blocks',
  meaning: 'An item is due by hours or a count, and names none of several meters or counters',
  remedy: m.meterAmbiguous_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => [...metersIn(visit, results), ...countersIn(visit)],
};

function metersIn(visit: Visit, results: Results): Hit[] {
  return hits(results.open.stated, ({ id, text, until, of, meter, kind, path }) => {
    const meters = (visit.meters?.readings ?? []).filter((reading) => reading.of === of).map((reading) => reading.id);
    if (until.hours === undefined || meter !== undefined || meters.length < 2) return undefined;
    const field = FIELDS[kind] ?? [];
    return {
      path: [...path, ...field],
      sentence: said(m.meterAmbiguous_notSayMeterHours, { id, text, meters: meters.join(', ') }),
      data: { id },
    };
  });
}

/** Part of an entry that has its limit. */
const FIELDS: Partial<Record<OpenItem['kind'], readonly string[]>> = { deferral: ['deferral'], watch: ['lookAgain'] };

/** Lines that count something by one of several counters, without naming it. */
function countersIn(visit: Visit): Hit[] {
  return hitsIn(['lives', 'items'], visit.lives?.items, (life) => {
    const { id, item, interval, product } = life;
    // LIFE_PRODUCT_UNKNOWN reports the product.
    if (product && !productNamed(visit.aircraft, product)) return [];
    return COUNTS.flatMap((counts) => {
      if (interval[counts] === undefined) return [];
      const counters = countersFor(visit, counts, countedBy(visit, life));
      if (counters.length < 2) return [];
      const names = counters.map((counter) => counter.id ?? 'landings').join(', ');
      return [
        {
          sentence: said(m.meterAmbiguous_notSayCounter, { id, item, counts: termOf(counts), counters: names }),
          data: { id },
        },
      ];
    });
  });
}
