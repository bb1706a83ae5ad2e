import * as m from '../../../text/generated/messages.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { unansweredItems } from '../../unanswered-items.ts';

export const openItemUnanswered: Rule = {
  code: 'OPEN_ITEM_UNANSWERED',
  severity: 'blocks',
  meaning: 'An earlier pack left an item open, and the record neither closes nor repeats it',
  remedy: m.openItemUnanswered_remedy,
  source: PRACTICE,
  check: (input) => unansweredItems(input, ({ kind }) => kind !== 'watch'),
};
