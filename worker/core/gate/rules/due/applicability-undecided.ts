import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { saysSomething } from '../../../text/printable.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const applicabilityUndecided: Rule = {
  code: 'APPLICABILITY_UNDECIDED',
  severity: 'blocks',
  meaning: 'Whether a binding bulletin applies cannot be told from the serial numbers',
  remedy: m.applicabilityUndecided_remedy,
  source: read('AMC M.A.305(d) (applicability shown)'),
  check: ({ visit, results }) =>
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
          sentence: said(m.applicabilityUndecided_whetherAppliesCannotTold, { id, subject }),
          data: { bulletin: id },
        },
      ];
    }),
};
