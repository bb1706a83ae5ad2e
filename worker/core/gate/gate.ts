import type { Results } from '../calc/results.ts';
import type { EarlierIssue } from '../record/earlier-issue.ts';
import type { Restated } from '../record/restated.ts';
import type { Visit } from '../record/visit.ts';
import type { Said } from '../text/message.ts';
import { figuresOf, isOfFigures } from './accepted-figures.ts';
import { withCauses } from './causes.ts';
import type { Finding, Severity } from './finding.ts';
import { printableAttachments } from './printable-attachments.ts';
import type { Regime } from './regimes/regime.ts';
import { regimeNamed } from './regimes/table.ts';
import { type AttachmentFact, findingsOf } from './rule.ts';
import { type GateOptions, ruleInput } from './rule-input.ts';
import { RULES } from './rules.ts';

/** Result of the release check of a visit. */
export interface Assessment<Text = string> {
  visit: Visit;
  results: Results;
  regime: Regime;
  findings: Finding<Text>[];
  /** Issue that this record replaces, and what differs from it; undefined if nothing does. */
  earlierIssue?: EarlierIssue | undefined;
  /** What the record states otherwise than its standing file. */
  restated: readonly Restated[];
  /** Nothing blocks, and every caution is acknowledged. */
  isReleasable: boolean;
  /** Facts of the attached files by SHA-256; no file is included if all together exceed a pack. */
  attachments: Readonly<Record<string, AttachmentFact>>;
}

const ORDER: Record<Severity, number> = { blocks: 0, caution: 1, note: 2 };

/** Checks a computed visit against every rule and lists all findings, blocks first. */
export function passGate(visit: Visit, results: Results, options: GateOptions): Assessment<Said> {
  const regime = regimeNamed(visit.aircraft.regime);
  const input = ruleInput(visit, results, regime, options);
  const weighty = RULES.filter(({ severity }) => severity !== 'note').flatMap((rule) => findingsOf(rule, input));
  const cautions = weighty.filter(({ severity }) => severity === 'caution');
  const cautionCodes = new Set(cautions.map(({ code }) => code));
  const cautionFigures = new Map([...cautionCodes].map((code) => [code, figuresOf(cautions, code)]));
  const notes = RULES.filter(({ severity }) => severity === 'note').flatMap((rule) =>
    findingsOf(rule, { ...input, cautionCodes, cautionFigures }),
  );
  const findings = withCauses(
    [...weighty, ...notes].map((finding) => acknowledged(visit, finding, cautionFigures)),
  ).sort((a, b) => ORDER[a.severity] - ORDER[b.severity] || Number(isCause(b)) - Number(isCause(a)));
  const attachments = printableAttachments(options.facts.attachments ?? {}, findings);
  const { earlierIssue, restated } = input;
  const isReleasable = findings.every(isSettled);
  return { visit, results, regime, earlierIssue, restated, findings, attachments, isReleasable };
}

/** Whether a finding does not stop the release: a note, or an accepted caution. */
export function isSettled({ severity, acknowledgedBy }: Pick<Finding, 'severity' | 'acknowledgedBy'>): boolean {
  return severity === 'note' || (severity === 'caution' && acknowledgedBy !== undefined);
}

/** Whether a finding is dealt with before others: it does not follow from one. */
function isCause({ follows }: Pick<Finding, 'follows'>): boolean {
  return follows === undefined;
}

/** Adds the person who accepted a caution, with these figures. Blocks cannot be accepted. */
function acknowledged(
  visit: Visit,
  finding: Finding<Said>,
  cautionFigures: ReadonlyMap<string, readonly number[]>,
): Finding<Said> {
  if (finding.severity !== 'caution') return finding;
  const figures = cautionFigures.get(finding.code) ?? [];
  const acceptance = visit.release?.acknowledgements?.find(
    ({ code, figures: accepted }) => code === finding.code && isOfFigures(accepted, figures),
  );
  return acceptance ? { ...finding, acknowledgedBy: acceptance.by } : finding;
}
