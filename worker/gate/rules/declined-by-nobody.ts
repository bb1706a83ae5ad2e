import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const declinedByNobody: Rule = {
  code: 'DECLINED_BY_NOBODY',
  severity: 'caution',
  meaning: 'Work is entered as declined, but not by whom and when',
  remedy: phrase`Have the owner say so and enter name and time`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, declined }, index): Hit[] =>
      disposition === 'declined' && !declined
        ? [
            {
              path: ['findings', index, 'declined'],
              sentence: say.words`Finding ${id} is declined, but not by whom and when`,
              data: { finding: id },
            },
          ]
        : [],
    ),
};
