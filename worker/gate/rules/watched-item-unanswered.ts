import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';
import { unansweredItems } from '../unanswered-items.ts';

export const watchedItemUnanswered: Rule = {
  code: 'WATCHED_ITEM_UNANSWERED',
  severity: 'caution',
  meaning: 'An earlier pack said that something is to be watched, and the record says nothing of it',
  remedy: phrase`Look at it again and record it, or answer for it under carried`,
  source: PRACTICE,
  check: (input) => unansweredItems(input, ({ kind }) => kind === 'watch'),
};
