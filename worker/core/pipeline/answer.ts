import type { Finding } from '../gate/finding.ts';
import { RULE_SET } from '../gate/rule-set.ts';
import type { EarlierIssue } from '../record/earlier-issue.ts';
import { answeredResults } from './answered-results.ts';
import type { Assessed } from './assess.ts';
import type { AssessmentResults } from './results-schema.ts';

/** Response to an assessment, as plain JSON in calculation units: kg, mm, l, and those at the end of names. */
export interface AssessmentAnswer {
  recordSha256: string;
  assessmentSha256: string;
  isReleasable: boolean;
  comparedWithEarlierPacks: boolean;
  ruleSet: string;
  regime: { id: string; version: string };
  /** Issue that the record replaces, and what differs from it. */
  earlierIssue?: EarlierIssue | undefined;
  findings: Finding[];
  results: AssessmentResults;
}

export function assessmentAnswer(assessed: Assessed): AssessmentAnswer {
  const { recordSha256, assessmentSha256, isReleasable, earlierIssue, findings, results, regime } = assessed;
  return {
    recordSha256,
    assessmentSha256,
    isReleasable,
    comparedWithEarlierPacks: results.open.isKnown,
    ruleSet: RULE_SET,
    regime: { id: regime.id, version: regime.version },
    ...(earlierIssue && { earlierIssue }),
    findings,
    results: answeredResults(assessed),
  };
}
