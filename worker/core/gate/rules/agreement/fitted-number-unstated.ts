import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { fittedItems } from '../../fitted-items.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { isNumbered } from '../../same-number.ts';

export const fittedNumberUnstated: Rule = {
  code: 'FITTED_NUMBER_UNSTATED',
  severity: 'caution',
  meaning: 'A fitted item states no part number or serial number, though its entry in the parts trace has one',
  remedy: m.fittedNumberUnstated_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const fitted = fittedItems(results);
    return hits(fitted, ({ item, part: named, path }) => {
      const part = visit.parts?.find(({ id }) => id === named);
      // One entry for several items is of a kit.
      if (!part || fitted.filter((each) => each.part === named).length > 1) return undefined;
      const { partNumber, serialOrBatch } = part;
      const values = { item: item.id, name: item.name, part: part.id };
      const data = { item: item.id, part: part.id };
      if (item.partNumber === undefined && isNumbered(partNumber))
        return {
          path: [...path, 'partNumber'],
          sentence: said(m.fittedNumberUnstated_partNumber, { ...values, number: partNumber }),
          data,
        };
      if (item.serial !== undefined || !isNumbered(serialOrBatch)) return undefined;
      return {
        path: [...path, 'serial'],
        sentence: said(m.fittedNumberUnstated_serial, { ...values, number: serialOrBatch }),
        data,
      };
    });
  },
};
