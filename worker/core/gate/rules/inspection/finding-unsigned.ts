import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const findingUnsigned: Rule = {
  code: 'FINDING_UNSIGNED',
  severity: 'caution',
  meaning: 'A finding does not say who found it, or when',
  remedy: m.findingUnsigned_remedy,
  source: read('14 CFR 43.11 (list of discrepancies)'),
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, text, foundBy, foundAt }) =>
      foundBy && foundAt
        ? undefined
        : { sentence: said(m.findingUnsigned_personOrTime, { id, text }), data: { finding: id } },
    ),
};
