import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { VisitRecord } from '../../client/client.ts';
import { ROOT } from './places.ts';
import { redated } from './redated.ts';

const VISITS = join(ROOT, 'fixtures/visits');

/** Names of the invented visits to start from. */
export const EXAMPLE_VISITS: readonly string[] = readdirSync(VISITS)
  .map((file) => file.replace(/\.json$/, ''))
  .sort();

/** Returns an invented visit as in the fixtures. */
export const exampleRecord = (name: string): VisitRecord =>
  JSON.parse(readFileSync(join(VISITS, `${name}.json`), 'utf8'));

/** Returns a visit with another registration, which its devices send as well. */
export function withRegistration(record: VisitRecord, registration: string): VisitRecord {
  const before = record.aircraft.registration;
  const plain = (marks: string): string => marks.replaceAll('-', '');
  const text = JSON.stringify(record).replaceAll(before, registration).replaceAll(plain(before), plain(registration));
  return JSON.parse(text) as VisitRecord;
}

/**
 * Returns an invented visit whose work ended yesterday. It has no departure: without one nothing depends on the hour.
 */
export function exampleVisit(name: string, now: Date): VisitRecord {
  const { departure: _departure, ...visit } = redated(exampleRecord(name), now);
  return visit;
}
