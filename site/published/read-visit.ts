import { generic } from '../../worker/core/gate/regimes/generic.ts';
import { readRecord } from '../../worker/core/record/read-record.ts';
import type { Visit } from '../../worker/core/record/visit.ts';
import { readFixture } from './read-fixture.ts';

/** The settings that the generic regime gives, on the evening of the demo visit. */
export const SETTINGS = {
  leastPilotKg: generic.leastPilotKg.value,
  standardPersonKg: generic.standardPersonKg.value,
  at: '2026-11-05T14:20:00+01:00',
};

/** A record in the units of calculation. */
export function visitFrom(record: unknown): Visit {
  const read = readRecord(record);
  if (!read.ok) throw new Error(`The record does not fit the schema: ${JSON.stringify(read.issues)}`);
  return read.visit;
}

/** A visit of `fixtures/visits/` in the units of calculation. */
export function readVisit(name: string): Visit {
  return visitFrom(readFixture(`visits/${name}`));
}
