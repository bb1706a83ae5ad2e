import { fixturesIn, readFixture } from './read-fixture.ts';
import { TOPICS } from './topics.ts';

/**
 * How sure the case is: `read`, inputs and output were read in a text; `read-in`, only the inputs were; `memory`, recalled and
 * read by nobody yet; `derived`, computed by hand from a rule that was read.
 */
export type CaseStatus = 'read' | 'read-in' | 'memory' | 'derived';

/** A case of `fixtures/published/`: what somebody else printed, to hold our computation against. */
export interface PublishedCase {
  id: string;
  topic: string;
  source: string;
  place: string;
  status: CaseStatus;
  /** Greatest residual of each quantity, and why that much. */
  tolerance: Record<string, number>;
  why: string;
  input: unknown;
  /** In the units of the source. */
  expected: Record<string, number>;
}

/** One quantity of one case. */
export interface PublishedRow extends Pick<PublishedCase, 'id' | 'topic' | 'source' | 'place' | 'status' | 'why'> {
  quantity: string;
  expected: number;
  ours: number;
  /** Ours less expected. */
  residual: number;
  tolerance: number;
}

/** Every quantity of every case, computed now: for the test and for the documentation. */
export function publishedTable(): PublishedRow[] {
  return fixturesIn('published').flatMap((name) => rowsOf(readFixture(`published/${name}`) as PublishedCase));
}

function rowsOf({ id, topic, source, place, status, why, tolerance, input, expected }: PublishedCase): PublishedRow[] {
  const compute = TOPICS[topic];
  if (!compute) throw new RangeError(`Cannot compute case ${id}: there is no topic ${topic}`);
  const results = compute(input as never);
  return Object.entries(expected).map(([quantity, value]) => {
    const ours = results[quantity] ?? Number.NaN;
    const row = { id, topic, source, place, status, why, quantity, expected: value, ours, residual: ours - value };
    return { ...row, tolerance: tolerance[quantity] ?? 0 };
  });
}
