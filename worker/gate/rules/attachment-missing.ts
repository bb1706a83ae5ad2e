import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const attachmentMissing: Rule = {
  code: 'ATTACHMENT_MISSING',
  severity: 'blocks',
  meaning: 'The record names a photograph or paper whose file was not handed in',
  remedy: phrase`Hand the file in under its digest, or take the entry out`,
  source: PRACTICE,
  check: ({ visit, facts, say }) =>
    (visit.attachments ?? []).flatMap(({ id, title, sha256 }, index): Hit[] =>
      facts.attachments?.[sha256]
        ? []
        : [
            {
              path: ['attachments', index, 'sha256'],
              sentence: say.words`The file of ${id}, ${title}, was not handed in`,
              data: { attachment: id, sha256 },
            },
          ],
    ),
};
