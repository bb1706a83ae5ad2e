import * as m from '../../../text/generated/messages.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { unansweredItems } from '../../unanswered-items.ts';

export const watchedItemUnanswered: Rule = {
  code: 'WATCHED_ITEM_UNANSWERED',
  severity: 'caution',
  meaning: 'An earlier pack listed an item to monitor, and the record does not mention it',
  remedy: m.watchedItemUnanswered_remedy,
  source: PRACTICE,
  check: (input) => unansweredItems(input, ({ kind }) => kind === 'watch'),
};
