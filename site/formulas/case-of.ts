import type { PublishedCase } from '../published/published-table.ts';
import { readFixture } from '../published/read-fixture.ts';

/** Returns the input of a published case, in the units of its source. */
export function inputOf<Input>(id: string): Input {
  return (readFixture(`published/${id}`) as PublishedCase).input as Input;
}
