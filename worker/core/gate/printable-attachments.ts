import { fault } from '../text/faults.ts';
import type { Finding } from './finding.ts';
import type { AttachmentFact } from './rule.ts';
import { attachmentsTakeTooMuch } from './rules/attachments/attachments-take-too-much.ts';
import { attachmentsTooLarge } from './rules/attachments/attachments-too-large.ts';

type Facts = Readonly<Record<string, AttachmentFact>>;

const TOO_MUCH: ReadonlySet<string> = new Set([attachmentsTooLarge.code, attachmentsTakeTooMuch.code]);

/**
 * What is known of the files, for whoever prints them. Where all together are more than one pack may hold, each is left out: a draft of a record
 * that cannot be released is printed all the same, and must not cost what no pack may.
 */
export function printableAttachments(facts: Facts, findings: readonly Pick<Finding, 'code' | 'data'>[]): Facts {
  if (!findings.some(({ code }) => TOO_MUCH.has(code))) return facts;
  const detail = fault('all-files-together-more-than-one');
  return Object.fromEntries(
    Object.entries(facts).map(([sha256, fact]) => [
      sha256,
      fact.ok ? { ok: false, refusal: 'too-large', detail } : fact,
    ]),
  );
}
