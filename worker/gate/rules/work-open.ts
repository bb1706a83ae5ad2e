import { type Hit, type Rule, read } from '../rule.ts';

export const workOpen: Rule = {
  code: 'WORK_OPEN',
  severity: 'blocks',
  meaning: 'A job of the worksheet is not finished',
  remedy: 'Finish it, or have it declined',
  source: read('14 CFR 43.9; ML.A.801 (incomplete maintenance)'),
  check: ({ visit }) =>
    (visit.worksheet ?? []).flatMap(({ id, text, state }, index): Hit[] =>
      state === 'done' || state === 'declined'
        ? []
        : [
            {
              path: ['worksheet', index, 'state'],
              sentence: `Job ${id}, ${text}, is ${state === 'in-hand' ? 'in hand' : 'waiting'}`,
              data: { job: id, state },
            },
          ],
    ),
};
