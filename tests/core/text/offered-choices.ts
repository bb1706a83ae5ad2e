import { visitJsonSchema } from '../../../worker/core/record/json-schema.ts';

/** Every text that the schema of the record offers to choose from. */
export function offeredChoices(schema: unknown = visitJsonSchema()): string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const { enum: offered = [], const: only } = schema as { enum?: unknown[]; const?: unknown };
  const own = [...offered, only].filter((entry) => typeof entry === 'string');
  return [...new Set([...own, ...Object.values(schema).flatMap((part) => offeredChoices(part))])];
}
