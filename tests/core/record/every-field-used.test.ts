import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { meaningOf } from '../../../worker/core/record/meaning.ts';
import { VisitRecord } from '../../../worker/core/record/record.ts';
import { QUANTITY_SUFFIX } from '../../../worker/core/units/quantity.ts';
import { ROOT } from '../../../worker/local/service/places.ts';
import { isKey, schemaFields } from './schema-fields.ts';

/** What comes after the door of the record: what computes, checks and prints. */
const STAGES = globSync('worker/core/{calc,gate,pack,pipeline}/**/*.ts', { cwd: ROOT });
/** The names that the door gives to measured fields. */
const UNITS = ['', ...Object.values(QUANTITY_SUFFIX)];
/** Fields that the gate finds by what they mean, not by name. */
const BY_MEANING = new Set(
  schemaFields(VisitRecord).flatMap(({ steps, schema }) => {
    const kind = meaningOf(schema)?.kind;
    return kind === 'person' || kind === 'timestamp' || kind === 'past-date' ? [steps.findLast(isKey)] : [];
  }),
);
/** About the record as a text, not about the visit. */
const OF_THE_TEXT = ['$schema', 'schemaVersion'];

const words = new Set(STAGES.flatMap((file) => readFileSync(join(ROOT, file), 'utf8').match(/\w+/g) ?? []));

test('every field that a workshop fills in is computed with, checked or printed somewhere', () => {
  const fields = [...new Set(schemaFields(VisitRecord).flatMap(({ steps }) => steps.filter(isKey)))];
  expect(fields.length).toBeGreaterThan(300);
  const idle = fields.filter((name) => !BY_MEANING.has(name) && !UNITS.some((unit) => words.has(name + unit)));
  expect(idle.filter((name) => !OF_THE_TEXT.includes(name))).toEqual([]);
});
