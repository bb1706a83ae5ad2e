import { compute, type Results } from '../../../worker/core/calc/results.ts';
import { type Assessment, passGate } from '../../../worker/core/gate/gate.ts';
import { regimeNamed } from '../../../worker/core/gate/regimes/table.ts';
import type { ArchiveFacts, RuleInput } from '../../../worker/core/gate/rule.ts';
import { type GateOptions, ruleInput } from '../../../worker/core/gate/rule-input.ts';
import { worded } from '../../../worker/core/gate/worded.ts';
import { earlierIssueOf } from '../../../worker/core/record/earlier-issue.ts';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { recordFormatter } from '../../../worker/core/record/record-formatter.ts';
import { restatedIn } from '../../../worker/core/record/restated.ts';
import type { Visit } from '../../../worker/core/record/visit.ts';
import type { Locale } from '../../../worker/core/text/locale.ts';
import { FIXTURE_FILES } from '../../fixture-files.ts';

/** The moment at which each visit of `fixtures/visits/` is releasable. */
export const RELEASABLE_AT: Readonly<Record<string, string>> = {
  'nose-wheel-full': '2026-11-05T14:20:00+01:00',
  'weighing-only': '2026-09-18T16:00:00-05:00',
  'computed-only': '2026-10-09T16:00:00+02:00',
  trike: '2026-10-22T16:30:00+01:00',
  helicopter: '2026-10-14T14:00:00-05:00',
  glider: '2026-03-11T16:00:00+01:00',
  'self-launching-glider': '2026-05-06T17:00:00+02:00',
  gyroplane: '2026-06-03T16:00:00+01:00',
  'powered-parachute': '2026-07-07T16:00:00-05:00',
  'weight-shift-hung': '2026-04-14T17:00:00+02:00',
  'electric-aeroplane': '2026-08-12T16:00:00+02:00',
  floats: '2026-05-20T15:00:00-05:00',
  'four-seat-tourer': '2026-07-21T13:00:00+01:00',
};

/**
 * Reads, computes and checks a record, without a pack.
 *
 * @param locale another language than that of the record
 */
export function assessRecord(record: unknown, at: string, facts: ArchiveFacts = {}, locale?: Locale): Assessment {
  const { visit, results, options } = computed(record, at, facts);
  return worded(passGate(visit, results, options), recordFormatter(visit, locale));
}

/** Reads and computes a record, and returns what a rule gets. */
export function inputOf(record: unknown, at: string, facts: ArchiveFacts = {}): RuleInput {
  const { visit, results, options } = computed(record, at, facts);
  return ruleInput(visit, results, regimeNamed(visit.aircraft.regime), options);
}

function computed(
  record: unknown,
  at: string,
  facts: ArchiveFacts,
): { visit: Visit; results: Results; options: GateOptions } {
  const read = readRecord(record);
  if (!read.ok) throw new Error(`The record does not fit the schema: ${JSON.stringify(read.issues)}`);
  const { leastPilotKg, standardPersonKg } = regimeNamed(read.visit.aircraft.regime);
  const settings = { leastPilotKg: leastPilotKg.value, standardPersonKg: standardPersonKg.value, at };
  const known = { attachments: FIXTURE_FILES.facts, ...facts };
  const results = compute(read.visit, { ...settings, open: facts.open, readings: facts.readings });
  const earlierIssue = earlierIssueOf(facts.earlierIssue, read.record);
  const restated = restatedIn(facts.standing ?? facts.newerStanding, read.record);
  return { visit: read.visit, results, options: { at, facts: known, earlierIssue, restated } };
}
