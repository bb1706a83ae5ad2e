/**
 * JSON in the one form that is digested: keys sorted by UTF-16 code unit, no white space, numbers as ECMAScript writes them.
 *
 * @throws TypeError for a value that JSON cannot carry
 * @source RFC 8785, JSON Canonicalization Scheme
 * @example canonicalJson({ b: 1, a: [true] })  // '{"a":[true],"b":1}'
 */
export function canonicalJson(value: unknown): string {
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object' && value !== null) return canonicalObject(value as Record<string, unknown>);
  if (typeof value === 'boolean' || value === null || Number.isFinite(value)) return String(value);
  throw new TypeError(`Cannot write JSON: value must be JSON: current value is ${String(value)}`);
}

function canonicalObject(object: Record<string, unknown>): string {
  let members = '';
  for (const key of inOrder(Object.keys(object))) {
    const member = object[key];
    if (member === undefined) continue;
    members += `${members === '' ? '' : ','}${quoted(key)}:${canonicalJson(member)}`;
  }
  return `{${members}}`;
}

const MOST_INSERTED = 30;

/**
 * Keys by UTF-16 code unit, as text compares. Sorted by insertion, in place: objects of a record have few keys, and for few
 * keys the platform's sort takes twice as long and as much memory again.
 */
function inOrder(keys: string[]): string[] {
  if (keys.length > MOST_INSERTED) return keys.sort();
  for (let next = 1; next < keys.length; next++) {
    const key = keys[next] as string;
    let at = next;
    for (; at > 0 && (keys[at - 1] as string) > key; at--) keys[at] = keys[at - 1] as string;
    keys[at] = key;
  }
  return keys;
}

/** Characters that stand for themselves between quotation marks: nearly every text of a record has no other. */
const PLAIN = /^[\x20\x21\x23-\x5b\x5d-\x7e]*$/;

function quoted(text: string): string {
  return PLAIN.test(text) ? `"${text}"` : JSON.stringify(text);
}
