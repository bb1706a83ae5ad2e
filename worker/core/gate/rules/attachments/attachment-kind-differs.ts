import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const attachmentKindDiffers: Rule = {
  code: 'ATTACHMENT_KIND_DIFFERS',
  severity: 'blocks',
  meaning: 'A file is of another kind than its entry',
  remedy: m.attachmentKindDiffers_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) =>
    hitsIn(['attachments'], visit.attachments, ({ id, kind, sha256 }) => {
      const fact = facts.attachments?.[sha256];
      if (!fact?.ok || (fact.kind === 'pdf') === (kind === 'paper')) return undefined;
      return {
        field: 'kind',
        sentence: said(m.attachmentKindDiffers_attachmentCalledFile, {
          id,
          kind: termOf(kind),
          kind2: fact.kind.toUpperCase(),
        }),
        data: { attachment: id, kind, file: fact.kind },
      };
    }),
};
