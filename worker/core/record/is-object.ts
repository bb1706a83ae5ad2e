/** JSON object. */
export type JsonObject = Readonly<Record<string, unknown>>;

/** Whether a JSON value is an object. */
export const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Returns a member of a JSON value; undefined if it has none. */
export const member = (of: unknown, key: string): unknown => (isObject(of) ? of[key] : undefined);
