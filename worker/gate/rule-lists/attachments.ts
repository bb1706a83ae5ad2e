import type { Rule } from '../rule.ts';
import { attachmentKindDiffers } from '../rules/attachment-kind-differs.ts';
import { attachmentMissing } from '../rules/attachment-missing.ts';
import { attachmentNotArchival } from '../rules/attachment-not-archival.ts';
import { attachmentRefused } from '../rules/attachment-refused.ts';

/** Photographs and papers. */
export const ATTACHMENT_RULES: readonly Rule[] = [
  attachmentMissing,
  attachmentRefused,
  attachmentKindDiffers,
  attachmentNotArchival,
];
