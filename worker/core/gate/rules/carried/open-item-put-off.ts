import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const openItemPutOff: Rule = {
  code: 'OPEN_ITEM_PUT_OFF',
  severity: 'blocks',
  meaning: 'An open item has a later limit than before or none, without an accepted extension',
  remedy: m.openItemPutOff_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    results.open.putOff.map(({ item, now }) => ({
      path: now.path,
      sentence: said(m.openItemPutOff_givenMoreTimeThan, { item: item.item ?? item.id, item2: item.text }),
      data: { item: item.item ?? item.id },
    })),
};
