import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const transponderTestMissing: Rule = {
  code: 'TRANSPONDER_TEST_MISSING',
  severity: 'blocks',
  meaning: 'A transponder was fitted or replaced and no test is recorded',
  remedy: m.transponderTestMissing_remedy,
  source: read('14 CFR 91.413'),
  check: ({ visit, results }) => {
    const isNew = results.change.changes.some(({ change }) => {
      const item = change.kind === 'replaced' ? change.by : change;
      return (
        change.kind !== 'removed' &&
        change.kind !== 'relocated' &&
        'name' in item &&
        /transponder/i.test(item.name) &&
        !/antenn/i.test(item.name)
      );
    });
    const wasTested = visit.surveillance?.transponderTest !== undefined;
    return isNew && !wasTested
      ? {
          path: visit.surveillance ? ['surveillance', 'transponderTest'] : ['surveillance'],
          sentence: said(m.transponderTestMissing_transponderFittedVisitBut),
        }
      : undefined;
  },
};
