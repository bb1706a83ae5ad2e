import { redated } from '../../worker/local/service/redated.ts';
import { readFixture } from '../read-fixture.ts';

/** A record that can be released: a weighing and nothing else. */
export interface SmallRecord {
  aircraft: { registration: string };
  visit: { arrivedAt: string; summary: string };
  release: { by: string };
}

/** As it stands in the fixtures: it can be released on the day after its weighing. */
export const WEIGHED = readFixture('visits/weighing-only') as SmallRecord;

/** Weighed yesterday, for services that run by the clock. */
const WEIGHED_YESTERDAY = redated(WEIGHED, new Date());

/** The person who releases it. */
export const RELEASED_BY = WEIGHED.release.by;

export function smallRecord(registration: string, summary: string, weighed = WEIGHED_YESTERDAY): SmallRecord {
  // A second release of the visit is a new issue, with its reason.
  const release = { ...weighed.release, reasonForIssue: summary };
  return { ...weighed, aircraft: { ...weighed.aircraft, registration }, visit: { ...weighed.visit, summary }, release };
}
