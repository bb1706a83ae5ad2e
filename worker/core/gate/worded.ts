import type { Formatter } from '../text/formatter.ts';
import type { Said } from '../text/message.ts';
import type { Finding } from './finding.ts';
import type { Assessment } from './gate.ts';

/** Formats the findings of an assessment in the units and language of a formatter. */
export function worded({ findings, ...assessment }: Assessment<Said>, fmt: Formatter): Assessment {
  return { ...assessment, findings: findings.map((finding) => wordedFinding(finding, fmt)) };
}

export function wordedFinding(finding: Finding<Said>, fmt: Formatter): Finding {
  return { ...finding, sentence: fmt.value(finding.sentence), remedy: fmt.value(finding.remedy) };
}
