import { TERMS } from './generated/terms.ts';
import type { Said, Value } from './message.ts';

const BY_VALUE: ReadonlyMap<string, Said['message']> = new Map(Object.entries(TERMS));

/**
 * Returns the term for a value of the record or of a result, such as a choice of the schema, as a value of a message.
 * Other text stays unchanged.
 *
 * @param document the document, if the term differs there
 */
export function termOf(value: string, document?: string): Value {
  const message = (document === undefined ? undefined : BY_VALUE.get(`${document} | ${value}`)) ?? BY_VALUE.get(value);
  return message ? { message, values: {} } : value;
}
