import type { Said } from '../text/message.ts';
import type { Printer } from '../text/print.ts';
import type { Finding } from './finding.ts';
import type { Assessment } from './gate.ts';

/** An assessment with its findings in words, in the units and the language of a printer. */
export function worded({ findings, ...assessment }: Assessment<Said>, say: Printer): Assessment {
  return { ...assessment, findings: findings.map((finding) => wordedFinding(finding, say)) };
}

export function wordedFinding(finding: Finding<Said>, say: Printer): Finding {
  return { ...finding, sentence: say.value(finding.sentence), remedy: say.value(finding.remedy) };
}
