import type { Modification } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { hits, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const testBeforeModification: Rule = {
  code: 'TEST_BEFORE_MODIFICATION',
  severity: 'blocks',
  meaning: 'A test is older than the end of the work that it covers',
  remedy: m.testBeforeModification_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, finishedAt, changes, tests }) =>
      hits(tests, ({ text, doneAt }, step) => {
        if (!doneAt || instantOf(doneAt) >= lastDone(changes, finishedAt)) return undefined;
        return {
          field: ['tests', step, 'doneAt'],
          sentence: said(m.testBeforeModification_modificationDoneBeforeWork, { id, text }),
          data: { modification: id },
        };
      }),
    ),
};

/** Instant of the last change, if each says when it was done; of the end of the whole modification otherwise. */
function lastDone(changes: Modification['changes'], finishedAt: string): number {
  const times = changes.map(({ doneAt }) => doneAt).filter((doneAt) => doneAt !== undefined);
  if (times.length === 0 || times.length < changes.length) return instantOf(finishedAt);
  return Math.max(...times.map(instantOf));
}
