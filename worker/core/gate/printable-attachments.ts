import { fault } from '../text/faults.ts';
import type { Finding } from './finding.ts';
import type { AttachmentFact } from './rule.ts';
import { attachmentsTakeTooMuch } from './rules/attachments/attachments-take-too-much.ts';
import { attachmentsTooLarge } from './rules/attachments/attachments-too-large.ts';

type Facts = Readonly<Record<string, AttachmentFact>>;

const TOO_MUCH: ReadonlySet<string> = new Set([attachmentsTooLarge.code, attachmentsTakeTooMuch.code]);

/**
 * Facts of the files for printing. If all together exceed the limits of a pack, each counts as refused: drafts are printed
 * even if the record cannot be released, and must not cost more than a pack.
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
