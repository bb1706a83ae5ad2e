import { productsOf } from '../../../calc/lives/product-time.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits } from '../../hits.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const productTimeUncounted: Rule = {
  code: 'PRODUCT_TIME_UNCOUNTED',
  severity: 'caution',
  meaning: 'The time of a product is not known: the total at its fitting or at release is missing',
  remedy: m.productTimeUncounted_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hits(productsOf(visit.aircraft), ({ kind, serial, path }) => {
      const time = results.products.find((each) => each.kind === kind && each.serial === serial);
      return (time?.clocks ?? []).flatMap(({ clock, sinceNew }): Hit[] =>
        sinceNew !== undefined
          ? []
          : [
              {
                path: [...path, 'fitted'],
                sentence: said(m.productTimeUncounted_notKnown, {
                  product: termOf(kind),
                  serial,
                  clock: termOf(clock),
                }),
                data: { product: kind, serial, clock },
              },
            ],
      );
    }),
};
