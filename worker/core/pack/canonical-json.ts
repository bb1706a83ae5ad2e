/**
 * Returns JSON in the canonical form for digests: keys sorted by UTF-16 code unit, no white space, numbers in
 * ECMAScript notation.
 *
 * Half a surrogate pair, which the RFC refuses, is written as its escape: a record with one is digested, and refused by
 * the release check.
 *
 * @throws TypeError for a value that JSON cannot carry
 * @source RFC 8785, JSON Canonicalization Scheme
 * @example canonicalJson({ b: 1, a: [true] })  // '{"a":[true],"b":1}'
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object' && value !== null) return canonicalObject(value as Record<string, unknown>);
  if (typeof value === 'string' || typeof value === 'boolean' || value === null || Number.isFinite(value))
    return JSON.stringify(value);
  throw new TypeError(`Cannot write JSON: value must be JSON: current value is ${String(value)}`);
}

function canonicalObject(object: Record<string, unknown>): string {
  let members = '';
  for (const key of Object.keys(object).sort()) {
    const member = object[key];
    if (member === undefined) continue;
    members += `${members === '' ? '' : ','}${JSON.stringify(key)}:${canonicalJson(member)}`;
  }
  return `{${members}}`;
}
