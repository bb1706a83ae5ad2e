import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const openItemPutOff: Rule = {
  code: 'OPEN_ITEM_PUT_OFF',
  severity: 'blocks',
  meaning:
    'Something that an earlier pack left open has a later limit than before, or none, was not done since, and nobody answers for extending it',
  remedy: phrase`Give the limit that it had, or answer for it under carried as extended, with the reason`,
  source: PRACTICE,
  check: ({ results, say }) =>
    results.open.putOff.map(({ item, now }) => ({
      path: now.path,
      sentence: say.words`${item.item ?? item.id}, “${item.text}”, is given more time than before`,
      data: { item: item.item ?? item.id },
    })),
};
