import * as z from 'zod';

export type Schema = z.core.$ZodType;

/** A schema of the record by its structure. */
export type SchemaNode =
  | { kind: 'value' }
  | { kind: 'list'; item: Schema }
  | { kind: 'part'; fields: Readonly<Record<string, Schema>> }
  | { kind: 'variants'; by: string; variants: ReadonlyMap<unknown, Schema> };

const VALUE: SchemaNode = { kind: 'value' };

/** Returns the node of a schema, optional or not; the one function that reads zod's own objects. */
export function nodeOf(schema: Schema): SchemaNode {
  if (schema instanceof z.ZodOptional) return nodeOf(schema.unwrap());
  if (schema instanceof z.ZodArray) return { kind: 'list', item: schema.element };
  if (schema instanceof z.ZodObject) return { kind: 'part', fields: schema.shape };
  if (schema instanceof z.ZodDiscriminatedUnion) return variantsOf(schema);
  return VALUE;
}

/** Returns the schema of the value itself, optional or not. */
export function withoutOptional(schema: Schema): Schema {
  return schema instanceof z.ZodOptional ? withoutOptional(schema.unwrap()) : schema;
}

function variantsOf(schema: z.ZodDiscriminatedUnion): SchemaNode {
  const by = schema.def.discriminator;
  const variants = new Map<unknown, Schema>();
  for (const option of schema.options) {
    const node = nodeOf(option);
    const field = node.kind === 'part' ? node.fields[by] : undefined;
    if (field instanceof z.ZodEnum) for (const value of field.options) variants.set(value, option);
  }
  return { kind: 'variants', by, variants };
}
