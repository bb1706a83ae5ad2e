import { retold } from '../../words/retold.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const attachmentNotArchival: Rule = {
  code: 'ATTACHMENT_NOT_ARCHIVAL',
  severity: 'note',
  meaning: 'An appended paper keeps the pack from being called an archival and accessible PDF',
  remedy: phrase`Have it saved as PDF/A; the pack is whole and sealed without it all the same`,
  source: read('ISO 19005-3 and ISO 14289-1, as far as the checks of this project go'),
  check: ({ visit, facts, say }) =>
    (visit.attachments ?? []).flatMap(({ id, title, sha256 }, index): Hit[] => {
      const fact = facts.attachments?.[sha256];
      if (!fact?.ok || fact.kind !== 'pdf' || fact.obstacles.length === 0) return [];
      return [
        {
          path: ['attachments', index, 'sha256'],
          sentence: say.words`${id}, ${title}, is no archival PDF: ${fact.obstacles.map((obstacle) => retold(obstacle, say.lexicon)).join('; ')}`,
          data: { attachment: id },
        },
      ];
    }),
};
