import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { fittedItems } from '../../fitted-items.ts';
import { hits } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { isNumbered, namesNumber } from '../../same-number.ts';

export const partNotOfItem: Rule = {
  code: 'PART_NOT_OF_ITEM',
  severity: 'blocks',
  meaning: 'A fitted item has another part number or serial number than its entry in the parts trace',
  remedy: m.partNotOfItem_remedy,
  source: read('ML.A.501(a) and (c) (a part is fitted with its own paper)'),
  check: ({ visit, results }) =>
    hits(fittedItems(results), ({ item, part: named, path }) => {
      const part = visit.parts?.find(({ id }) => id === named);
      if (!part) return undefined;
      if (isNumbered(item.serial) && part.serialOrBatch !== undefined && !namesNumber(part.serialOrBatch, item.serial))
        return {
          path: [...path, 'serial'],
          sentence: said(m.partNotOfItem_serialDiffers, {
            item: item.id,
            serial: item.serial,
            part: part.id,
            traced: part.serialOrBatch,
          }),
          data: { item: item.id, part: part.id, serial: item.serial, traced: part.serialOrBatch },
        };
      if (item.partNumber === undefined || part.partNumber === undefined) return undefined;
      if (namesNumber(part.partNumber, item.partNumber)) return undefined;
      return {
        path: [...path, 'partNumber'],
        sentence: said(m.partNotOfItem_partNumberDiffers, {
          item: item.id,
          number: item.partNumber,
          part: part.id,
          traced: part.partNumber,
        }),
        data: { item: item.id, part: part.id, partNumber: item.partNumber, traced: part.partNumber },
      };
    }),
};
