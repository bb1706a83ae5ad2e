import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const attachmentMissing: Rule = {
  code: 'ATTACHMENT_MISSING',
  severity: 'blocks',
  meaning: 'The file of a photograph or document in the record was not received',
  remedy: m.attachmentMissing_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) =>
    hitsIn(['attachments'], visit.attachments, ({ id, title, sha256 }) => {
      if (facts.attachments?.[sha256]) return undefined;
      return {
        field: 'sha256',
        sentence: said(m.attachmentMissing_fileNotHanded, { id, title }),
        data: { attachment: id, sha256 },
      };
    }),
};
