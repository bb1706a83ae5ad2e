import * as z from 'zod';
import { nodeOf, type Schema, withoutOptional } from '../../../worker/core/record/schema-node.ts';

/** A step into a schema: a field, an entry of a list, or the kind that a part is of. */
export type Step = string | { entry: true } | { by: string; kind: unknown };

export const isKey = (step: Step): step is string => typeof step === 'string';

/** A field of a schema that is no part, list or choice of parts. */
export interface SchemaField {
  steps: readonly Step[];
  /** Without the kinds: `findings/#/closedAt`. */
  name: string;
  schema: Schema;
}

/** Every field of a schema, by its own walk: each variant of a part for itself. */
export function schemaFields(schema: Schema, steps: readonly Step[] = []): SchemaField[] {
  const node = nodeOf(schema);
  if (node.kind === 'list') return schemaFields(node.item, [...steps, { entry: true }]);
  if (node.kind === 'part')
    return Object.entries(node.fields).flatMap(([key, field]) => schemaFields(field, [...steps, key]));
  if (node.kind === 'variants') {
    const kinds = new Map([...node.variants].map(([kind, variant]) => [variant, kind]));
    return [...kinds].flatMap(([variant, kind]) => schemaFields(variant, [...steps, { by: node.by, kind }]));
  }
  return [{ steps, name: nameOf(steps), schema: withoutOptional(schema) }];
}

const nameOf = (steps: readonly Step[]): string =>
  steps.flatMap((step) => (isKey(step) ? [step] : 'entry' in step ? ['#'] : [])).join('/');

/** A value for a schema, made of the examples of its fields; what may be left out is, and lists are as short as they may be. */
export function exampleOf(schema: Schema): unknown {
  const node = nodeOf(schema);
  if (node.kind === 'list') return filled([exampleOf(node.item)], schema);
  if (node.kind === 'variants') return exampleOf([...node.variants.values()][0] ?? schema);
  if (node.kind === 'value') return examplesOf(withoutOptional(schema))[0];
  const needed = Object.entries(node.fields).filter(([, field]) => withoutOptional(field) === field);
  return Object.fromEntries(needed.map(([key, field]) => [key, exampleOf(field)]));
}

/** A list with as many entries as it has to have, those that lack made of examples. */
function filled(entries: readonly unknown[], schema: Schema): unknown[] {
  const node = nodeOf(schema);
  if (node.kind !== 'list') return [...entries];
  const lacking = leastEntries(schema) - entries.length;
  return [...entries, ...Array.from({ length: Math.max(0, lacking) }, () => exampleOf(node.item))];
}

/** What the published JSON Schema says of the length of a list. */
const leastEntries = (schema: Schema): number =>
  z.toJSONSchema(withoutOptional(schema), { unrepresentable: 'any' }).minItems ?? 0;

const examplesOf = (schema: Schema): readonly unknown[] =>
  (z.globalRegistry.get(schema)?.examples ?? []) as readonly unknown[];

/**
 * Puts a value where a field stands, and whatever has to stand around it: in a list in its first entry of the right kind, or else in a
 * new one.
 *
 * @returns the record with the value, and the pointer to it
 */
export function withField(
  schema: Schema,
  record: unknown,
  [step, ...rest]: readonly Step[],
  value: unknown,
): { record: unknown; pointer: string } {
  if (step === undefined) return { record: value, pointer: '' };
  const node = nodeOf(schema);
  if (isKey(step) && node.kind === 'part') {
    const field = node.fields[step] ?? schema;
    const around = (record ?? exampleOf(schema)) as Record<string, unknown>;
    const inner = withField(field, around[step], rest, value);
    return { record: { ...around, [step]: inner.record }, pointer: `/${step}${inner.pointer}` };
  }
  if (node.kind === 'list') {
    const entries = (record ?? []) as unknown[];
    const found = entries.findIndex((entry) => isOfKind(entry, rest[0]));
    const index = found < 0 ? entries.length : found;
    const inner = withField(node.item, entries[index], rest, value);
    return {
      record: filled([...entries.slice(0, index), inner.record, ...entries.slice(index + 1)], schema),
      pointer: `/${index}${inner.pointer}`,
    };
  }
  if (typeof step !== 'object' || !('by' in step) || node.kind !== 'variants')
    throw new Error(`No such step: ${String(step)}`);
  const variant = node.variants.get(step.kind) ?? schema;
  const same = isOfKind(record, step) ? record : undefined;
  return withField(variant, same, rest, value);
}

function isOfKind(entry: unknown, step: Step | undefined): boolean {
  if (entry === undefined) return false;
  if (typeof step !== 'object' || !('by' in step)) return true;
  return (entry as Record<string, unknown>)[step.by] === step.kind;
}
