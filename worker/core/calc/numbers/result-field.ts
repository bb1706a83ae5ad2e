import type * as z from 'zod';

/**
 * Declares a member of a result that is always named and may have no value: `undefined` in calc, left out of JSON. A
 * result without it does not compile.
 */
export function orUndefined<Schema extends z.ZodType>(schema: Schema): z.ZodType<z.output<Schema> | undefined> {
  return schema.optional();
}
