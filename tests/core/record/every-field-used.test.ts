import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { SchemaNode } from '../../../site/build/schema-node.ts';
import { visitJsonSchema } from '../../../worker/core/record/json-schema.ts';
import { meaningOf } from '../../../worker/core/record/meaning.ts';
import { VisitRecord } from '../../../worker/core/record/record.ts';
import { ROOT } from '../../../worker/local/service/places.ts';
import { isKey, schemaFields } from './schema-fields.ts';

/** What comes after the door of the record: what computes, checks and prints. */
const STAGES = globSync('worker/core/{calc,gate,pack,pipeline}/**/*.ts', { cwd: ROOT });
/** The names that the door gives to measured fields. */
const UNITS = ['', 'Kg', 'Mm', 'L', 'KgMm', 'KgPerL', 'LPerH'];
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

function fieldsOf(node: SchemaNode): string[] {
  const inner = node.items ?? node;
  const forms = inner.oneOf ?? inner.anyOf ?? [];
  const own = Object.entries(inner.properties ?? {}).flatMap(([name, field]) => [name, ...fieldsOf(field)]);
  return [...own, ...forms.flatMap(fieldsOf)];
}

test('every field that a workshop fills in is computed with, checked or printed somewhere', () => {
  const fields = [...new Set(fieldsOf(visitJsonSchema()))];
  expect(fields.length).toBeGreaterThan(300);
  const idle = fields.filter((name) => !BY_MEANING.has(name) && !UNITS.some((unit) => words.has(name + unit)));
  expect(idle.filter((name) => !OF_THE_TEXT.includes(name))).toEqual([]);
});
