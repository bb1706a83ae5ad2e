import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const complianceUnshown: Rule = {
  code: 'COMPLIANCE_UNSHOWN',
  severity: 'blocks',
  meaning: 'A bulletin is marked as complied with, but revision, method, date or evidence is missing',
  remedy: m.complianceUnshown_remedy,
  source: read('14 CFR 91.417(a)(2)(v) (method, number, revision)'),
  check: ({ visit }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, (bulletin) => {
      const { id, status, revision, method, doneOn, evidence, subject } = bulletin;
      if (status !== 'complied' || (revision && method && doneOn && evidence)) return undefined;
      return { sentence: said(m.complianceUnshown_revisionMethodDayEvidence, { id, subject }), data: { bulletin: id } };
    }),
};
