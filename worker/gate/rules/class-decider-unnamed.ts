import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const classDeciderUnnamed: Rule = {
  code: 'CLASS_DECIDER_UNNAMED',
  severity: 'blocks',
  meaning: 'Nobody is named who decided the class of a modification',
  remedy: phrase`Name the person who decided it`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.modifications ?? []).flatMap(({ id, classifiedBy }, index): Hit[] =>
      classifiedBy
        ? []
        : [
            {
              path: ['modifications', index, 'classifiedBy'],
              sentence: say.words`Nobody is named who decided the class of modification ${id}`,
              data: { modification: id },
            },
          ],
    ),
};
