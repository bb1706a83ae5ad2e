import { NO_READINGS } from '../calc/open-items/readings.ts';
import { compute } from '../calc/results.ts';
import { type Assessment, passGate } from '../gate/gate.ts';
import { regimeNamed } from '../gate/regimes/table.ts';
import type { ArchiveFacts, RegisteredPerson } from '../gate/rule.ts';
import { RULE_SET } from '../gate/rule-set.ts';
import { worded } from '../gate/worded.ts';
import { canonicalJson } from '../pack/canonical-json.ts';
import { sha256 } from '../pack/digest.ts';
import { earlierIssueOf } from '../record/earlier-issue.ts';
import { localZone } from '../record/local-zone.ts';
import { readRecord } from '../record/read-record.ts';
import type { VisitRecord } from '../record/record.ts';
import { recordFormatter } from '../record/record-formatter.ts';
import type { RecordIssue } from '../record/record-issue.ts';
import type { KnownPerson } from '../record/resolve-record.ts';
import { restatedIn } from '../record/restated.ts';
import { inZoneOf } from '../units/calendar.ts';
import { withOrigin } from './past.ts';

/** A record that fits the schema, with its results and findings. */
export interface Assessed extends Assessment {
  /** In the present version, whole. */
  record: VisitRecord;
  /** Record as posted, of any version: target of the pointers. */
  posted: unknown;
  /** SHA-256 of `posted` in canonical JSON. */
  postedSha256: string;
  /** The whole record in canonical JSON: the sealed and attached form. Equal to the posted one if that was whole. */
  recordJson: string;
  /** SHA-256 of `recordJson`. */
  recordSha256: string;
  /** Returns the JSON pointer, in the record as posted, of one into `record`. */
  pointerAsPosted(at: string): string;
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
  const outcome = readRecord(input, { standing: facts.standing, people: facts.people?.map(inRecordForm) });
  if (!outcome.ok) return outcome;
  const { record, visit, whole, pointerAsPosted } = outcome;
  const recordJson = canonicalJson(whole);
  // Runs in parallel with the computation: the platform hashes on a separate thread.
  const digesting = Promise.all([sha256(recordJson), whole === input ? undefined : sha256(canonicalJson(input))]);
  const { id, version, leastPilotKg, standardPersonKg } = regimeNamed(visit.aircraft.regime);
  // Due and expired items go by the calendar of the workshop.
  const local = inZoneOf(localZone(visit), at);
  const { open, readings } = facts.open
    ? withOrigin({ open: facts.open, readings: facts.readings ?? NO_READINGS }, record)
    : facts;
  const regime = { leastPilotKg: leastPilotKg.value, standardPersonKg: standardPersonKg.value };
  const earlierIssue = earlierIssueOf(facts.earlierIssue, record);
  const results = compute(visit, { ...regime, at: local, open, readings });
  const restated = restatedIn(facts.standing ?? facts.newerStanding, record);
  const options = { at: local, facts, earlierIssue, restated };
  const assessment = worded(passGate(visit, results, options), recordFormatter(visit));
  const findings = assessment.findings.map((finding) => ({
    ...finding,
    pointer: pointerAsPosted(finding.pointer),
  }));
  const [recordSha256, postedSha256 = recordSha256] = await digesting;
  const read = {
    recordSha256,
    ruleSet: RULE_SET,
    regime: { id, version },
    // An inspector also reads the items that earlier packs left open, counted from the last readings.
    ...((open?.length || readings?.meters.length || readings?.counters?.length) && {
      pastSha256: await sha256(canonicalJson({ open, readings })),
    }),
    ...(earlierIssue && { replaces: earlierIssue.pack }),
  };
  const assessmentSha256 = await sha256(canonicalJson(read));
  return {
    ok: true,
    assessed: {
      ...assessment,
      findings,
      record,
      posted: input,
      postedSha256,
      recordJson,
      recordSha256,
      assessmentSha256,
      pointerAsPosted,
    },
  };
}

/** Returns a person of the people table as a record states them. */
function inRecordForm({ id, name, capacity, licence, scope, until }: RegisteredPerson): KnownPerson {
  return {
    ...{ id, name, capacity, scope },
    ...(licence !== null && { authorisation: licence }),
    ...(until !== null && { validUntil: until }),
  };
}
