import { compute, type Results } from '../../../worker/core/calc/results.ts';
import type { Finding } from '../../../worker/core/gate/finding.ts';
import { passGate } from '../../../worker/core/gate/gate.ts';
import { regimeNamed } from '../../../worker/core/gate/regimes/table.ts';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { restatedIn } from '../../../worker/core/record/restated.ts';
import { FIXTURE_FILES } from '../../fixture-files.ts';
import type { Known } from './known.ts';
import type { Json } from './place.ts';

/** A finding by code and place, without its text. */
export type Bare = Pick<Finding, 'code' | 'severity' | 'pointer' | 'acknowledgedBy'>;

export interface Assessed {
  results: Results;
  findings: Bare[];
}

/**
 * Computes and checks a record, unworded.
 *
 * @param known what the workshop knows of the aircraft; without it, this is its first record
 * @returns undefined if it does not fit the schema
 */
export function assessed(record: Json, at: string, known?: Known): Assessed | undefined {
  const read = readRecord(record);
  if (!read.ok) return undefined;
  const { leastPilotKg, standardPersonKg } = regimeNamed(read.visit.aircraft.regime);
  const settings = { leastPilotKg: leastPilotKg.value, standardPersonKg: standardPersonKg.value, at };
  const { open, readings, newerStanding } = known?.facts ?? {};
  const results = compute(read.visit, { ...settings, open, readings });
  const facts = { ...known?.facts, attachments: FIXTURE_FILES.facts };
  const restated = restatedIn(newerStanding, read.record);
  const { findings } = passGate(read.visit, results, { at, facts, restated });
  return { results, findings };
}
