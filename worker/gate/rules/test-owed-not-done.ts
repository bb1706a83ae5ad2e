import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const testOwedNotDone: Rule = {
  code: 'TEST_OWED_NOT_DONE',
  severity: 'blocks',
  meaning: 'A test that a modification calls for was not done or failed',
  remedy: phrase`Do the test, and again until it passes`,
  source: read('AMC M.A.305(d) (test programme and results)'),
  check: ({ visit, say }) =>
    (visit.modifications ?? []).flatMap(({ id, tests }, index) =>
      (tests ?? []).flatMap(({ text, result }, step): Hit[] => {
        if (result === 'passed' || result === 'after-release') return [];
        return [
          {
            path: ['modifications', index, 'tests', step, 'result'],
            sentence:
              result === 'failed'
                ? say.words`Modification ${id}: “${text}” failed`
                : say.words`Modification ${id}: “${text}” was not done`,
            data: { modification: id, result },
          },
        ];
      }),
    ),
};
