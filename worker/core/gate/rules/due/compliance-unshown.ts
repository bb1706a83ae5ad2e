import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const complianceUnshown: Rule = {
  code: 'COMPLIANCE_UNSHOWN',
  severity: 'blocks',
  meaning: 'A bulletin is said to be complied with, but not when, how or where it stands',
  remedy: m.complianceUnshown_remedy,
  source: read('14 CFR 91.417(a)(2)(v) as summarised (method, number, revision)'),
  check: ({ visit }) =>
    (visit.bulletins?.items ?? []).flatMap(
      ({ id, status, revision, method, doneOn, evidence, subject }, index): Hit[] => {
        if (status !== 'complied' || (revision && method && doneOn && evidence)) return [];
        return [
          {
            path: ['bulletins', 'items', index],
            sentence: said(m.complianceUnshown_revisionMethodDayEvidence, { id, subject }),
            data: { bulletin: id },
          },
        ];
      },
    ),
};
