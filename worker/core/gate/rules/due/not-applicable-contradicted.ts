import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { saysSomething } from '../../../text/printable.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const notApplicableContradicted: Rule = {
  code: 'NOT_APPLICABLE_CONTRADICTED',
  severity: 'blocks',
  meaning: 'A bulletin is marked as not applicable, but applies by its serial numbers',
  remedy: m.notApplicableContradicted_remedy,
  source: read('AMC M.A.305(d) (applicability shown)'),
  check: ({ visit, results }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, ({ id, status, reason, subject }, index) => {
      if (status !== 'not-applicable' || saysSomething(reason) || results.applicability[index] !== 'applies')
        return undefined;
      return {
        field: 'status',
        sentence: said(m.notApplicableContradicted_appliesSerialNumbersNo, { id, subject }),
        data: { bulletin: id },
      };
    }),
};
