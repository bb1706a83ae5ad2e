import { productsOf } from '../../../calc/lives/product-time.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits } from '../../hits.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const productTimeUncounted: Rule = {
  code: 'PRODUCT_TIME_UNCOUNTED',
  severity: 'caution',
  meaning: 'The time of a product is not known: the total at its fitting or at release is missing',
  remedy: m.productTimeUncounted_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { meters } = visit;
    // A visit that reads nothing states no time.
    if (!meters) return undefined;
    const isRead = (name: string): boolean =>
      [...meters.readings, ...(meters.counters ?? [])].some(({ id }) => id === name);
    return hits(productsOf(visit.aircraft), ({ kind, serial, fitted, path }): Hit[] => {
      const hit = (at: readonly (string | number)[], clock: Value): Hit => ({
        path: [...path, 'fitted', ...at],
        sentence: said(m.productTimeUncounted_notKnown, { product: termOf(kind), serial, clock }),
        data: { product: kind, serial },
      });
      const names = [fitted?.meter, ...(fitted?.counters ?? [])];
      const unread = names.flatMap((name, index) => {
        if (name === undefined || isRead(name)) return [];
        return [hit(index === 0 ? ['meter'] : ['counters', index - 1], name)];
      });
      const time = results.products.find((each) => each.kind === kind && each.serial === serial);
      const unknown = (time?.clocks ?? []).filter(({ sinceNew }) => sinceNew === undefined);
      return unread.length > 0 ? unread : unknown.map(({ clock }) => hit([], termOf(clock)));
    });
  },
};
