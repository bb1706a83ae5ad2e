import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const transponderTestMissing: Rule = {
  code: 'TRANSPONDER_TEST_MISSING',
  severity: 'blocks',
  meaning: 'A transponder was fitted or replaced and no test is recorded',
  remedy: phrase`Test it`,
  source: read('14 CFR 91.413'),
  check: ({ visit, results, say }) => {
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
      ? [
          {
            path: visit.surveillance ? ['surveillance', 'transponderTest'] : ['surveillance'],
            sentence: say.words`A transponder was fitted in this visit, but no test of it is recorded`,
          },
        ]
      : [];
  },
};
