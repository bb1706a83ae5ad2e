import { redated } from '../../worker/embedded/redated.ts';
import { readFixture } from '../read-fixture.ts';

/** A record that can be released today: a weighing and nothing else. */
export interface SmallRecord {
  aircraft: { registration: string };
  visit: { arrivedAt: string; summary: string };
  release: { by: string };
}

const RECORD = redated(readFixture('visits/weighing-only') as SmallRecord, new Date());

/** The person who releases it. */
export const RELEASED_BY = RECORD.release.by;

export function smallRecord(registration: string, summary: string): SmallRecord {
  return { ...RECORD, aircraft: { ...RECORD.aircraft, registration }, visit: { ...RECORD.visit, summary } };
}
