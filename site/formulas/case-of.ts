import type { PublishedCase } from '../published/published-table.ts';
import { readFixture } from '../published/read-fixture.ts';

/** What a published case gives, in the units of its source. */
export function inputOf<Input>(id: string): Input {
  return (readFixture(`published/${id}`) as PublishedCase).input as Input;
}
