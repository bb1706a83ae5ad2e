import { saysSomething } from '../../text/printable.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const applicabilityUndecided: Rule = {
  code: 'APPLICABILITY_UNDECIDED',
  severity: 'blocks',
  meaning: 'Whether a binding bulletin applies cannot be told from the serial numbers',
  remedy: phrase`Give the serial number, or the reason why it does not apply`,
  source: read('AMC M.A.305(d) (applicability shown)'),
  check: ({ visit, results, say }) =>
    (visit.bulletins?.items ?? []).flatMap(({ id, kind, status, reason, subject }, index): Hit[] => {
      const binds = kind === 'directive' || kind === 'mandatory';
      if (
        !binds ||
        results.applicability[index] !== 'undecided' ||
        (status === 'not-applicable' && saysSomething(reason)) ||
        status === 'complied'
      )
        return [];
      return [
        {
          path: ['bulletins', 'items', index, 'applicability'],
          sentence: say.words`Whether ${id}, ${subject}, applies cannot be told`,
          data: { bulletin: id },
        },
      ];
    }),
};
