import { compute } from '../calc/results.ts';
import { type Assessment, passGate } from '../gate/gate.ts';
import { regimeNamed } from '../gate/regimes/table.ts';
import type { ArchiveFacts } from '../gate/rule.ts';
import { RULE_SET } from '../gate/rule-set.ts';
import { worded } from '../gate/worded.ts';
import { canonicalJson } from '../pack/canonical-json.ts';
import { sha256 } from '../pack/digest.ts';
import { localZone } from '../record/local-zone.ts';
import { readRecord } from '../record/read-record.ts';
import type { VisitRecord } from '../record/record.ts';
import { recordFormatter } from '../record/record-formatter.ts';
import type { RecordIssue } from '../record/record-issue.ts';
import { pointerAsPosted } from '../record/upgrades.ts';
import { inZoneOf } from '../units/calendar.ts';

/** A record that fits the schema, with its results and findings. */
export interface Assessed extends Assessment {
  /** In the present version. */
  record: VisitRecord;
  /** Record as posted, of any version: target of the pointers. */
  posted: unknown;
  /** `posted` in canonical JSON: the digested, attached and kept form. */
  recordJson: string;
  /** SHA-256 of `recordJson`. */
  recordSha256: string;
  /**
   * SHA-256 over record, rule set, regime, and open items and readings of earlier packs: the content that an inspector
   * reads and releases.
   */
  assessmentSha256: string;
}

export type AssessOutcome = { ok: true; assessed: Assessed } | { ok: false; issues: RecordIssue[] };

/**
 * Reads, computes and checks a record.
 *
 * @param input parsed JSON of any shape
 * @param at time of the assessment, ISO 8601 with offset
 */
export async function assess(input: unknown, at: string, facts: ArchiveFacts = {}): Promise<AssessOutcome> {
  const outcome = readRecord(input);
  if (!outcome.ok) return outcome;
  const { record, visit } = outcome;
  const recordJson = canonicalJson(input);
  // Runs in parallel with the computation: the platform hashes on a separate thread.
  const digesting = sha256(recordJson);
  const { id, version, leastPilotKg, standardPersonKg } = regimeNamed(visit.aircraft.regime);
  // Due and expired items go by the calendar of the workshop.
  const local = inZoneOf(localZone(visit), at);
  const { open, readings } = facts;
  const regime = { leastPilotKg: leastPilotKg.value, standardPersonKg: standardPersonKg.value };
  const results = compute(visit, { ...regime, at: local, open, readings });
  const assessment = worded(passGate(visit, results, { at: local, facts }), recordFormatter(visit));
  const findings = assessment.findings.map((finding) => ({
    ...finding,
    pointer: pointerAsPosted(input, finding.pointer),
  }));
  const recordSha256 = await digesting;
  const read = {
    recordSha256,
    ruleSet: RULE_SET,
    regime: { id, version },
    // An inspector also reads the items that earlier packs left open, counted from the last readings.
    ...((open?.length || readings?.meters.length || readings?.counters?.length) && {
      pastSha256: await sha256(canonicalJson({ open, readings })),
    }),
  };
  const assessmentSha256 = await sha256(canonicalJson(read));
  return {
    ok: true,
    assessed: { ...assessment, findings, record, posted: input, recordJson, recordSha256, assessmentSha256 },
  };
}
