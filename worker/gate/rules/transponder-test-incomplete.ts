import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const transponderTestIncomplete: Rule = {
  code: 'TRANSPONDER_TEST_INCOMPLETE',
  severity: 'blocks',
  meaning: 'The transponder test leaves out something that the class of the transponder needs',
  remedy: phrase`Measure it, or enter what was measured`,
  source: read('14 CFR 43 Appendix F (c)(2) and (e) to (j)'),
  check: ({ results, say }) => {
    const { transponderOmissions = [], modeS = [] } = results.surveillance ?? {};
    const unknown = modeS
      .filter(({ outcome }) => outcome === 'not recorded')
      .map(({ name, paragraph }) => `${paragraph} ${say.term(name)}`);
    const missing = [...transponderOmissions.map((what) => say.term(what)), ...unknown];
    if (missing.length === 0) return [];
    return [
      {
        path: ['surveillance', 'transponderTest'],
        sentence: say.words`The transponder test does not record: ${missing.join('; ')}`,
        data: { missing: missing.length },
      },
    ];
  },
};
