import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const placardOwed: Rule = {
  code: 'PLACARD_OWED',
  severity: 'blocks',
  meaning: 'A placard that a modification calls for is not in place',
  remedy: phrase`Fit the placard`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.modifications ?? []).flatMap(({ id, placards }, index) =>
      (placards ?? []).flatMap(({ text, state }, step): Hit[] =>
        state === 'in-place'
          ? []
          : [
              {
                path: ['modifications', index, 'placards', step, 'state'],
                sentence: say.words`Modification ${id}: the placard “${text}” is not in place`,
                data: { modification: id },
              },
            ],
      ),
    ),
};
