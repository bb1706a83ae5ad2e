import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const workOpen: Rule = {
  code: 'WORK_OPEN',
  severity: 'blocks',
  meaning: 'A job of the worksheet is not finished',
  remedy: phrase`Finish it, or have it declined`,
  source: read('14 CFR 43.9; ML.A.801 (incomplete maintenance)'),
  check: ({ visit, say }) =>
    (visit.worksheet ?? []).flatMap(({ id, text, state }, index): Hit[] =>
      state === 'done' || state === 'declined'
        ? []
        : [
            {
              path: ['worksheet', index, 'state'],
              sentence: say.words`Job ${id}, ${text}, is ${state === 'in-hand' ? say.words`in hand` : say.words`waiting`}`,
              data: { job: id, state },
            },
          ],
    ),
};
