import { readdirSync, readFileSync } from 'node:fs';

const FIXTURES = `${import.meta.dirname}/../../fixtures`;

/** The parsed JSON of a fixture, by its path under `fixtures/` without the ending. */
export function readFixture(path: string): unknown {
  return JSON.parse(readFileSync(`${FIXTURES}/${path}.json`, 'utf8'));
}

/** Names of the JSON files in a folder of `fixtures/`, without their ending, in order. */
export function fixturesIn(folder: string): string[] {
  return readdirSync(`${FIXTURES}/${folder}`)
    .filter((name) => name.endsWith('.json'))
    .map((name) => name.slice(0, -'.json'.length))
    .sort();
}
