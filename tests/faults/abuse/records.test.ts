import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { visitJsonSchema } from '../../../worker/core/record/json-schema.ts';
import { RUNS } from '../../property-runs.ts';
import { readFixture } from '../../read-fixture.ts';
import { fitting } from '../../schema-arbitrary.ts';
import { type Abused, abused } from './abused.ts';
import { chanceOf } from './chance.ts';
import { mutated } from './mutated.ts';

const FITTING = 6_000;
const MUTATED = 34_000;
const SEED = Number(RUNS.seed);

let service: Abused;

beforeAll(async () => {
  service = await abused();
});

afterAll(() => {
  console.log(`${service.sent} requests with generated records, seed ${SEED}`);
});

test(`${FITTING} records generated from the schema are answered`, { timeout: 300_000 }, async () => {
  const records = fc.sample(fitting(visitJsonSchema()), { numRuns: FITTING, seed: SEED });
  const statuses = new Set<number>();
  for (const record of records)
    statuses.add(await service.send('/v1/assessments', { method: 'POST', body: JSON.stringify(record) }));
  expect(statuses).toContain(200);
});

test(`${MUTATED} records mutated from fixtures are answered`, { timeout: 300_000 }, async () => {
  const chance = chanceOf(SEED);
  const small = ['weighing-only', 'computed-only'].map((name) => readFixture(`visits/${name}`));
  const large = ['trike', 'nose-wheel-full'].map((name) => readFixture(`visits/${name}`));
  for (let index = 0; index < MUTATED; index++) {
    const body = mutated(chance.oneOf(chance.isLucky(0.02) ? large : small), chance);
    await service.send('/v1/assessments', { method: 'POST', body });
  }
});
