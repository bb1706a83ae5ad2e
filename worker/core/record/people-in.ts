import { isObject } from './is-object.ts';
import type { Schema } from './schema-node.ts';
import { type SchemaTree, treeOf } from './schema-tree.ts';

/** Returns the identifiers of all people that a value of a schema names, sorted; the value need not fit the schema. */
export function peopleIn(schema: Schema, value: unknown): string[] {
  const found = new Set<string>();
  walk(treeOf(schema), value, found);
  return [...found].sort();
}

function walk({ means, shape }: SchemaTree, value: unknown, found: Set<string>): void {
  if (means?.kind === 'person') {
    if (typeof value === 'string') found.add(value);
  } else if (shape.kind === 'list') {
    if (Array.isArray(value)) for (const entry of value) walk(shape.item, entry, found);
  } else if (shape.kind !== 'value' && isObject(value)) {
    const fields = shape.kind === 'part' ? shape.fields : variantFields(shape.variants.get(value[shape.by]));
    for (const [key, field] of fields) if (Object.hasOwn(value, key)) walk(field, value[key], found);
  }
}

const variantFields = (tree: SchemaTree | undefined): Iterable<[string, SchemaTree]> =>
  tree?.shape.kind === 'part' ? tree.shape.fields : [];
