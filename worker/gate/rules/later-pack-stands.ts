import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const laterPackStands: Rule = {
  code: 'LATER_PACK_STANDS',
  severity: 'caution',
  meaning: 'The pack of this visit is corrected after a later pack was released, which carries the old figures forward',
  remedy: phrase`Issue the later pack anew once this one is released, from the figures of this one`,
  source: PRACTICE,
  check: ({ facts, say }) =>
    (facts.laterPacks ?? []).map((pack) => ({
      path: '/visit',
      sentence: say.words`${pack} was released after this visit and does not know of this correction`,
      data: { pack },
    })),
};
