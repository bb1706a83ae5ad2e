import { TERMS } from './generated/terms.ts';
import type { Said, Value } from './message.ts';

const BY_VALUE: ReadonlyMap<string, Said['message']> = new Map(Object.entries(TERMS));

/**
 * What the record or a result names by a value, such as a choice of the schema, as a value of a message. What is no term of ours
 * stays as it is.
 *
 * @param document the document in which it stands, where it means something else there
 */
export function termOf(value: string, document?: string): Value {
  const message = (document === undefined ? undefined : BY_VALUE.get(`${document} | ${value}`)) ?? BY_VALUE.get(value);
  return message ? { message, values: {} } : value;
}
