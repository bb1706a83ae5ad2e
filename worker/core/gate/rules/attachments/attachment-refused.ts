import { saidFault } from '../../../text/faults.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const attachmentRefused: Rule = {
  code: 'ATTACHMENT_REFUSED',
  severity: 'caution',
  meaning: 'A file cannot go into the pack: it is damaged, encrypted, too large or contains scripts',
  remedy: m.attachmentRefused_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) =>
    hitsIn(['attachments'], visit.attachments, ({ id, title, sha256 }) => {
      const fact = facts.attachments?.[sha256];
      if (!fact || fact.ok) return undefined;
      return {
        field: 'sha256',
        sentence: said(m.attachmentRefused_fileLeftOut, { id, title, fault: saidFault(fact.detail) }),
        data: { attachment: id, refusal: fact.refusal },
      };
    }),
};
