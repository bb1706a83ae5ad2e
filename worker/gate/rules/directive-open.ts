import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const directiveOpen: Rule = {
  code: 'DIRECTIVE_OPEN',
  severity: 'blocks',
  meaning: 'A directive or mandatory bulletin that applies is open or declined',
  remedy: phrase`Comply with it before flight`,
  source: read('14 CFR 91.417; ML.A.301(d)'),
  check: ({ visit, results, say }) =>
    (visit.bulletins?.items ?? []).flatMap(({ id, kind, status, subject }, index): Hit[] => {
      const binds = kind === 'directive' || kind === 'mandatory';
      if (!binds || results.applicability[index] === 'does-not-apply' || (status !== 'open' && status !== 'declined'))
        return [];
      return [
        {
          path: ['bulletins', 'items', index, 'status'],
          sentence: say.words`${id}, ${subject}, binds and is ${say.term(status)}`,
          data: { bulletin: id },
        },
      ];
    }),
};
