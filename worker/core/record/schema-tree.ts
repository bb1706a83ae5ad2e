import { type Meaning, meaningOf } from './meaning.ts';
import { nodeOf, type Schema, withoutOptional } from './schema-node.ts';

/** A schema as plain data, with its meaning: the plan of every walk over values of the schema. */
export interface SchemaTree {
  means: Meaning | undefined;
  shape: TreeShape;
}

type TreeShape =
  | { kind: 'value' }
  | { kind: 'list'; item: SchemaTree }
  | { kind: 'part'; fields: ReadonlyMap<string, SchemaTree> }
  | { kind: 'variants'; by: string; variants: ReadonlyMap<unknown, SchemaTree> };

const trees = new WeakMap<Schema, SchemaTree>();

/** Returns the tree of a schema, read once: access to zod's objects takes longer than the walk over a record. */
export function treeOf(field: Schema): SchemaTree {
  const schema = withoutOptional(field);
  const known = trees.get(schema);
  if (known) return known;
  const tree = { means: meaningOf(schema), shape: shapeOf(schema) };
  trees.set(schema, tree);
  return tree;
}

function shapeOf(schema: Schema): TreeShape {
  const node = nodeOf(schema);
  if (node.kind === 'list') return { kind: 'list', item: treeOf(node.item) };
  if (node.kind === 'part')
    return { kind: 'part', fields: new Map(Object.entries(node.fields).map(([key, inner]) => [key, treeOf(inner)])) };
  if (node.kind === 'value') return node;
  const variants = new Map([...node.variants].map(([name, variant]) => [name, treeOf(variant)]));
  return { kind: 'variants', by: node.by, variants };
}
