import type { PublishedCase } from '../../tests/published-table.ts';
import { readFixture } from '../../tests/read-fixture.ts';

/** What a published case gives, in the units of its source. */
export function inputOf<Input>(id: string): Input {
  return (readFixture(`published/${id}`) as PublishedCase).input as Input;
}
