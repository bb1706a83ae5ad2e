import { instantOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const testBeforeModification: Rule = {
  code: 'TEST_BEFORE_MODIFICATION',
  severity: 'blocks',
  meaning: 'A test is older than the end of the work that it tests',
  remedy: phrase`Test again after the last work`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.modifications ?? []).flatMap(({ id, finishedAt, tests }, index) =>
      (tests ?? []).flatMap(({ text, doneAt }, step): Hit[] => {
        if (!doneAt || instantOf(doneAt) >= instantOf(finishedAt)) return [];
        return [
          {
            path: ['modifications', index, 'tests', step, 'doneAt'],
            sentence: say.words`Modification ${id}: “${text}” was done before the work was finished`,
            data: { modification: id },
          },
        ];
      }),
    ),
};
