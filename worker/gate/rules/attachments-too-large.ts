import { LIMITS } from '../../limits.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

const MEGABYTE = 1_000_000;

export const attachmentsTooLarge: Rule = {
  code: 'ATTACHMENTS_TOO_LARGE',
  severity: 'blocks',
  meaning: 'The files of all attachments together are more than one pack can hold',
  remedy: phrase`Hand in smaller copies, or leave some out`,
  source: PRACTICE,
  check: ({ visit, facts, say }) => {
    const files = new Set((visit.attachments ?? []).map(({ sha256 }) => sha256));
    const bytes = [...files].reduce((sum, sha256) => {
      const fact = facts.attachments?.[sha256];
      return sum + (fact?.ok ? fact.bytes : 0);
    }, 0);
    if (bytes <= LIMITS.attachedBytes) return [];
    const inMegabytes = (value: number): string => say.plain(value / MEGABYTE, 1);
    return [
      {
        path: ['attachments'],
        sentence: say.words`The attachments have ${inMegabytes(bytes)} MB together; a pack holds ${inMegabytes(LIMITS.attachedBytes)} MB`,
        data: { bytes },
      },
    ];
  },
};
