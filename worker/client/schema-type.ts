type Type = 'object' | 'array' | 'string' | 'number' | 'integer' | 'boolean' | 'null';

/** Part of JSON Schema that zod writes. */
export interface Schema {
  $ref?: string;
  type?: Type | readonly Type[];
  title?: string;
  /** Name of its type, if different from its title. */
  'x-name'?: string;
  description?: string;
  format?: string;
  const?: unknown;
  enum?: readonly unknown[];
  anyOf?: readonly Schema[];
  oneOf?: readonly Schema[];
  items?: Schema;
  properties?: Readonly<Record<string, Schema>>;
  required?: readonly string[];
  additionalProperties?: boolean | Schema;
}

/** Objects with a title, by the name of their type. */
export type NamedTypes = ReadonlyMap<string, Schema>;

/** Returns the type name of an object: `Kept visit` becomes `KeptVisit`. */
const typeName = (schema: Schema): string =>
  (schema['x-name'] ?? schema.title ?? '').replaceAll(
    /[^A-Za-z0-9]*([A-Za-z0-9]+)[^A-Za-z0-9]*/g,
    (_all, word: string) => word.charAt(0).toUpperCase() + word.slice(1),
  );

/**
 * Returns every object with a title that no object of another shape has: it gets its own type. The others are written
 * inline.
 */
export function namedTypes(roots: readonly unknown[]): NamedTypes {
  const shapes = new Map<string, Map<string, Schema>>();
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    const schema = value as Schema;
    if (schema.type === 'object' && schema.properties && typeof schema.title === 'string') {
      const name = typeName(schema);
      shapes.set(name, (shapes.get(name) ?? new Map<string, Schema>()).set(JSON.stringify(schema), schema));
    }
    Object.values(value).forEach(walk);
  };
  roots.forEach(walk);
  const named = [...shapes].flatMap(([name, found]) =>
    found.size === 1 ? [...found.values()].map((schema) => [name, schema] as const) : [],
  );
  return new Map(named);
}

/** Returns the TypeScript type of a schema. */
export function typeOf(schema: Schema, named: NamedTypes): string {
  const { $ref, const: only, enum: values, type = [] } = schema;
  if ($ref !== undefined) return $ref.replace('#/components/schemas/', '');
  if (only !== undefined) return JSON.stringify(only);
  if (values) return values.map((value) => JSON.stringify(value)).join(' | ');
  const alternatives = schema.anyOf ?? schema.oneOf;
  const types = alternatives?.map((one) => typeOf(one, named)) ?? [type].flat().map((one) => typed(one, schema, named));
  return types.length > 0 ? [...new Set(types)].join(' | ') : 'unknown';
}

function typed(type: Type, schema: Schema, named: NamedTypes): string {
  if (type === 'array') return `Array<${typeOf(schema.items ?? {}, named)}>`;
  if (type === 'integer') return 'number';
  if (type === 'string' && schema.format === 'binary') return 'Uint8Array';
  if (type !== 'object') return type;
  const name = typeName(schema);
  return named.has(name) ? name : objectType(schema, named);
}

/** Returns the fields of an object, in braces, with an index signature if it takes any field. */
export function objectType(
  { properties = {}, required = [], additionalProperties }: Schema,
  named: NamedTypes,
): string {
  const fields = Object.entries(properties).map(([field, schema]) => {
    const type = typeOf(schema, named);
    return `${comment(schema)}${JSON.stringify(field)}${required.includes(field) ? `: ${type}` : `?: ${type} | undefined`};`;
  });
  if (typeof additionalProperties === 'object') {
    const value = typeOf(additionalProperties, named);
    fields.push(`[field: string]: ${fields.length > 0 ? 'unknown' : value};`);
  }
  return `{\n${fields.join('\n')}\n}`;
}

/** Returns the description of a schema or call, as a comment in front of it. */
export function comment({
  title,
  description,
}: {
  title?: string | undefined;
  description?: string | undefined;
}): string {
  const text = [title, description].filter(Boolean).join(': ').replaceAll('*/', '* /');
  return text === '' ? '' : `/** ${text} */\n`;
}
