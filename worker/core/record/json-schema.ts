import * as z from 'zod';
import { isObject } from './is-object.ts';
import { type Meaning, meaningOf } from './meaning.ts';
import { VisitRecord } from './record.ts';

/** Returns the record as JSON Schema 2020-12, with title, description, unit, example and meaning of every field. */
export function visitJsonSchema(): Record<string, unknown> {
  return {
    $id: '/v1/schema/visit.json',
    ...jsonSchemaOf(VisitRecord),
  };
}

/** Parts of a record that a standing file never completes. */
const WHOLE_PARTS = ['standing', 'visit'];

/**
 * Returns the schema of a record that names the standing file: it may state any part of a record, and any part of that.
 */
export function smallJsonSchema(): Record<string, unknown> {
  const whole = visitJsonSchema();
  const { properties, ...rest } = whole as { properties: Record<string, unknown> };
  const parts = Object.entries(properties).map(([key, part]) => [
    key,
    WHOLE_PARTS.includes(key) ? part : withoutRequired(part),
  ]);
  return {
    ...rest,
    $id: '/v1/schema/small.json',
    properties: Object.fromEntries(parts),
    required: ['schemaVersion', 'standing', 'visit'],
  };
}

/** Returns a JSON schema in which no member is required: an incomplete variant may then fit several. */
function withoutRequired(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(withoutRequired);
  if (!isObject(schema)) return schema;
  const members = Object.entries(schema).filter(([key, value]) => key !== 'required' || !Array.isArray(value));
  return Object.fromEntries(members.map(([key, value]) => [key === 'oneOf' ? 'anyOf' : key, withoutRequired(value)]));
}

/** Returns a schema as JSON Schema, with the meanings of its fields. */
export function jsonSchemaOf(schema: z.ZodType, io: 'input' | 'output' = 'output'): Record<string, unknown> {
  return z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    reused: 'inline',
    io,
    override: ({ zodSchema, jsonSchema }) => {
      Object.assign(jsonSchema, annotationsOf(meaningOf(zodSchema)));
    },
  });
}

/** Keywords of our own, for editors and for the documentation; no validator looks at them. */
export const ANNOTATIONS = [
  'unit',
  'x-name',
  'quantity',
  'identifies',
  'refersTo',
  'notBefore',
  'notAfter',
  'within',
] as const;

function annotationsOf(means: Meaning | undefined): Partial<Record<(typeof ANNOTATIONS)[number], unknown>> {
  if (means?.kind === 'identifier') return { identifies: means.of[0] };
  if (means?.kind === 'person') return { refersTo: ['person'] };
  if (means?.kind === 'reference') return { refersTo: means.to };
  if (means?.kind === 'arm') return means.outside === undefined ? { within: 'airframe' } : {};
  if (means?.kind === 'past-date') return { notAfter: ['now'] };
  if (means?.kind !== 'timestamp') return {};
  return { notBefore: means.after, notAfter: [...means.before, ...(means.future === undefined ? ['now'] : [])] };
}
