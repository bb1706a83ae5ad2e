import { productNamed, productsOf } from '../../../calc/lives/product-time.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const lifeProductUnknown: Rule = {
  code: 'LIFE_PRODUCT_UNKNOWN',
  severity: 'blocks',
  meaning: 'An item names a product that is not aboard, or one of several, or counts its time by another meter',
  remedy: m.lifeProductUnknown_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['lives', 'items'], visit.lives?.items, ({ id, item, meter, product: named }) => {
      if (!named) return undefined;
      const product = productNamed(visit.aircraft, named);
      const data = { life: id };
      const values = { id, item, kind: termOf(named.kind), serial: named.serial ?? '' };
      if (!product) {
        const isAboard = productsOf(visit.aircraft).some(({ kind }) => kind === named.kind);
        const message =
          isAboard && named.serial === undefined ? m.lifeProductUnknown_several : m.lifeProductUnknown_none;
        return { field: 'product', sentence: said(message, values), data };
      }
      const { fitted } = product;
      const isOther = fitted?.sinceNew.hours !== undefined && meter !== undefined && meter !== fitted.meter;
      return isOther ? { field: 'meter', sentence: said(m.lifeProductUnknown_otherMeter, values), data } : undefined;
    }),
};
