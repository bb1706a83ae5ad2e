import { LIMITS } from '../../limits.ts';
import { printNumber } from '../../units/rounding.ts';
import { PRACTICE, type Rule } from '../rule.ts';

const MEGABYTE = 1_000_000;

export const attachmentsTooLarge: Rule = {
  code: 'ATTACHMENTS_TOO_LARGE',
  severity: 'blocks',
  meaning: 'The files of all attachments together are more than one pack can hold',
  remedy: 'Hand in smaller copies, or leave some out',
  source: PRACTICE,
  check: ({ visit, facts }) => {
    const files = new Set((visit.attachments ?? []).map(({ sha256 }) => sha256));
    const bytes = [...files].reduce((sum, sha256) => {
      const fact = facts.attachments?.[sha256];
      return sum + (fact?.ok ? fact.bytes : 0);
    }, 0);
    if (bytes <= LIMITS.attachedBytes) return [];
    const [have, most] = [bytes, LIMITS.attachedBytes].map((value) => printNumber(value / MEGABYTE, 1));
    return [
      {
        path: ['attachments'],
        sentence: `The attachments have ${have} MB together; a pack holds ${most} MB`,
        data: { bytes },
      },
    ];
  },
};
