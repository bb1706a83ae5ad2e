import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const attachmentKindDiffers: Rule = {
  code: 'ATTACHMENT_KIND_DIFFERS',
  severity: 'blocks',
  meaning: 'A file is not what the record says it is',
  remedy: phrase`Correct the kind, or the digest`,
  source: PRACTICE,
  check: ({ visit, facts, say }) =>
    (visit.attachments ?? []).flatMap(({ id, kind, sha256 }, index): Hit[] => {
      const fact = facts.attachments?.[sha256];
      if (!fact?.ok || (fact.kind === 'pdf') === (kind === 'paper')) return [];
      return [
        {
          path: ['attachments', index, 'kind'],
          sentence: say.words`Attachment ${id} is called a ${say.term(kind)}, and its file is a ${fact.kind.toUpperCase()}`,
          data: { attachment: id, kind, file: fact.kind },
        },
      ];
    }),
};
