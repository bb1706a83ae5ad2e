import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { saysSomething } from '../../../text/printable.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const applicabilityUndecided: Rule = {
  code: 'APPLICABILITY_UNDECIDED',
  severity: 'blocks',
  meaning: 'The serial numbers do not decide whether a binding bulletin applies',
  remedy: m.applicabilityUndecided_remedy,
  source: read('AMC M.A.305(d) (applicability shown)'),
  check: ({ visit, results }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, ({ id, kind, status, document, subject }, index) => {
      const binds = kind === 'directive' || kind === 'mandatory';
      if (
        !binds ||
        results.applicability[index] !== 'undecided' ||
        (status === 'not-applicable' && saysSomething(document)) ||
        status === 'complied'
      )
        return undefined;
      return {
        field: 'applicability',
        sentence: said(m.applicabilityUndecided_whetherAppliesCannotTold, { id, subject }),
        data: { bulletin: id },
      };
    }),
};
