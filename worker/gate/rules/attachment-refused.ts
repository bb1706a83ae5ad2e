import { retold } from '../../words/retold.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const attachmentRefused: Rule = {
  code: 'ATTACHMENT_REFUSED',
  severity: 'caution',
  meaning: 'A file cannot be put into the pack: it is damaged, encrypted, too large, or does things when it is opened',
  remedy: phrase`Hand in a plain copy, printed to PDF or saved as JPEG, or release without it and say why`,
  source: PRACTICE,
  check: ({ visit, facts, say }) =>
    (visit.attachments ?? []).flatMap(({ id, title, sha256 }, index): Hit[] => {
      const fact = facts.attachments?.[sha256];
      if (!fact || fact.ok) return [];
      return [
        {
          path: ['attachments', index, 'sha256'],
          sentence: say.words`The file of ${id}, ${title}, is left out: ${retold(fact.detail, say.lexicon)}`,
          data: { attachment: id, refusal: fact.refusal },
        },
      ];
    }),
};
