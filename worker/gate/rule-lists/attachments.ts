import type { Rule } from '../rule.ts';
import { attachmentKindDiffers } from '../rules/attachment-kind-differs.ts';
import { attachmentMissing } from '../rules/attachment-missing.ts';
import { attachmentNotArchival } from '../rules/attachment-not-archival.ts';
import { attachmentRefused } from '../rules/attachment-refused.ts';
import { attachmentsTakeTooMuch } from '../rules/attachments-take-too-much.ts';
import { attachmentsTooLarge } from '../rules/attachments-too-large.ts';

/** Photographs and papers. */
export const ATTACHMENT_RULES: readonly Rule[] = [
  attachmentMissing,
  attachmentRefused,
  attachmentKindDiffers,
  attachmentsTooLarge,
  attachmentsTakeTooMuch,
  attachmentNotArchival,
];
