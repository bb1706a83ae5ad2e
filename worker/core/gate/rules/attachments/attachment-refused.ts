import { saidFault } from '../../../text/faults.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const attachmentRefused: Rule = {
  code: 'ATTACHMENT_REFUSED',
  severity: 'caution',
  meaning: 'A file cannot be put into the pack: it is damaged, encrypted, too large, or does things when it is opened',
  remedy: m.attachmentRefused_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) =>
    (visit.attachments ?? []).flatMap(({ id, title, sha256 }, index): Hit[] => {
      const fact = facts.attachments?.[sha256];
      if (!fact || fact.ok) return [];
      return [
        {
          path: ['attachments', index, 'sha256'],
          sentence: said(m.attachmentRefused_fileLeftOut, { id, title, fault: saidFault(fact.detail) }),
          data: { attachment: id, refusal: fact.refusal },
        },
      ];
    }),
};
