import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const attachmentKindDiffers: Rule = {
  code: 'ATTACHMENT_KIND_DIFFERS',
  severity: 'blocks',
  meaning: 'A file is not what the record says it is',
  remedy: m.attachmentKindDiffers_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) =>
    (visit.attachments ?? []).flatMap(({ id, kind, sha256 }, index): Hit[] => {
      const fact = facts.attachments?.[sha256];
      if (!fact?.ok || (fact.kind === 'pdf') === (kind === 'paper')) return [];
      return [
        {
          path: ['attachments', index, 'kind'],
          sentence: said(m.attachmentKindDiffers_attachmentCalledFile, {
            id,
            kind: termOf(kind),
            kind2: fact.kind.toUpperCase(),
          }),
          data: { attachment: id, kind, file: fact.kind },
        },
      ];
    }),
};
