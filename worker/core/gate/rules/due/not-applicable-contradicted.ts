import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { saysSomething } from '../../../text/printable.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const notApplicableContradicted: Rule = {
  code: 'NOT_APPLICABLE_CONTRADICTED',
  severity: 'blocks',
  meaning: 'A bulletin is said not to apply, but its serial numbers say that it does',
  remedy: m.notApplicableContradicted_remedy,
  source: read('AMC M.A.305(d) (applicability shown)'),
  check: ({ visit, results }) =>
    (visit.bulletins?.items ?? []).flatMap(({ id, status, reason, subject }, index): Hit[] => {
      if (status !== 'not-applicable' || saysSomething(reason) || results.applicability[index] !== 'applies') return [];
      return [
        {
          path: ['bulletins', 'items', index, 'status'],
          sentence: said(m.notApplicableContradicted_appliesSerialNumbersNo, { id, subject }),
          data: { bulletin: id },
        },
      ];
    }),
};
