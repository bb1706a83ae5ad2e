import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const attachmentMissing: Rule = {
  code: 'ATTACHMENT_MISSING',
  severity: 'blocks',
  meaning: 'The record names a photograph or paper whose file was not handed in',
  remedy: m.attachmentMissing_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) =>
    (visit.attachments ?? []).flatMap(({ id, title, sha256 }, index): Hit[] =>
      facts.attachments?.[sha256]
        ? []
        : [
            {
              path: ['attachments', index, 'sha256'],
              sentence: said(m.attachmentMissing_fileNotHanded, { id, title }),
              data: { attachment: id, sha256 },
            },
          ],
    ),
};
