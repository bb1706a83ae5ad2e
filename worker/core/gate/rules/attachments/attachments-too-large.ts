import { LIMITS } from '../../../limits.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

const MEGABYTE = 1_000_000;

export const attachmentsTooLarge: Rule = {
  code: 'ATTACHMENTS_TOO_LARGE',
  severity: 'blocks',
  meaning: 'The files of all attachments are together too large for one pack',
  remedy: m.attachmentsTooLarge_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) => {
    const files = new Set((visit.attachments ?? []).map(({ sha256 }) => sha256));
    const bytes = [...files].reduce((sum, sha256) => {
      const fact = facts.attachments?.[sha256];
      return sum + (fact?.ok ? fact.bytes : 0);
    }, 0);
    if (bytes <= LIMITS.attachedBytes) return undefined;
    const [megabytes, limit] = figure.plainApart(bytes / MEGABYTE, LIMITS.attachedBytes / MEGABYTE, 1);
    return {
      path: ['attachments'],
      sentence: said(m.attachmentsTooLarge_attachmentsMbTogetherPack, {
        inMegabytes: megabytes,
        inMegabytes2: limit,
      }),
      data: { bytes },
    };
  },
};
