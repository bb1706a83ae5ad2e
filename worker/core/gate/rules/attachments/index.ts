import type { Rule } from '../../rule.ts';
import { attachmentKindDiffers } from './attachment-kind-differs.ts';
import { attachmentMissing } from './attachment-missing.ts';
import { attachmentNotArchival } from './attachment-not-archival.ts';
import { attachmentRefused } from './attachment-refused.ts';
import { attachmentsTakeTooMuch } from './attachments-take-too-much.ts';
import { attachmentsTooLarge } from './attachments-too-large.ts';

/** Photographs and documents. */
export const ATTACHMENT_RULES: readonly Rule[] = [
  attachmentMissing,
  attachmentRefused,
  attachmentKindDiffers,
  attachmentsTooLarge,
  attachmentsTakeTooMuch,
  attachmentNotArchival,
];
