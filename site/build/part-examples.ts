import { visitJsonSchema } from '../../worker/core/record/json-schema.ts';
import { exampleRecord } from '../../worker/local/service/example-visit.ts';

/** Records that examples are taken from: the first record with the part is used. */
const SOURCES = ['weighing-only', 'nose-wheel-full', 'trike'];
/** Max. entries of a list in an example. */
const MAX_SHOWN = 3;

/** Part of the schema that examples are made from. */
interface PartSchema {
  examples?: readonly Value[];
  items?: PartSchema;
  properties?: Readonly<Record<string, PartSchema>>;
}

type Value = string | number | boolean | null | readonly Value[] | { readonly [name: string]: Value };

/**
 * Returns a part of an invented record with lists cut short; made from the examples of the schema if no record has it.
 */
export function partExample(name: string): Value | undefined {
  const found = SOURCES.map((source) => (exampleRecord(source) as unknown as Record<string, Value>)[name]);
  const part = found.find((value) => value !== undefined);
  return part === undefined ? exampleOf((visitJsonSchema() as PartSchema).properties?.[name]) : shortened(part);
}

/** Returns an example made from the examples of a schema: one entry of each list, every field of each object. */
function exampleOf(schema: PartSchema | undefined): Value | undefined {
  if (schema?.examples) return schema.examples[0];
  if (schema?.items) return [exampleOf(schema.items) ?? null];
  const fields = Object.entries(schema?.properties ?? {}).map(([name, field]) => [name, exampleOf(field) ?? null]);
  return schema?.properties ? Object.fromEntries(fields) : undefined;
}

function shortened(value: Value): Value {
  if (Array.isArray(value)) return value.slice(0, MAX_SHOWN).map(shortened);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, shortened(inner)]));
}
