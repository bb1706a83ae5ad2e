import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const interferenceNotChecked: Rule = {
  code: 'INTERFERENCE_NOT_CHECKED',
  severity: 'caution',
  meaning: 'Nobody checked whether the equipment disturbs radio and compass',
  remedy: phrase`Run the engine with everything on, on several channels`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    visit.surveillance && visit.surveillance.interferenceChecked !== true
      ? [
          {
            path: ['surveillance', 'interferenceChecked'],
            sentence: say.words`Nobody checked whether the equipment disturbs radio and compass`,
          },
        ]
      : [],
};
