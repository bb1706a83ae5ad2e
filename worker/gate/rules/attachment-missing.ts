import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const attachmentMissing: Rule = {
  code: 'ATTACHMENT_MISSING',
  severity: 'blocks',
  meaning: 'The record names a photograph or paper whose file was not handed in',
  remedy: 'Hand the file in under its digest, or take the entry out',
  source: PRACTICE,
  check: ({ visit, facts }) =>
    (visit.attachments ?? []).flatMap(({ id, title, sha256 }, index): Hit[] =>
      facts.attachments?.[sha256]
        ? []
        : [
            {
              path: ['attachments', index, 'sha256'],
              sentence: `The file of ${id}, ${title}, was not handed in`,
              data: { attachment: id, sha256 },
            },
          ],
    ),
};
