/**
 * JSON in the one form that is digested: keys sorted by UTF-16 code unit, no white space, numbers as ECMAScript writes them.
 *
 * @throws TypeError for a value that JSON cannot carry
 * @source RFC 8785, JSON Canonicalization Scheme
 * @example canonicalJson({ b: 1, a: [true] })  // '{"a":[true],"b":1}'
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const members = Object.entries(value)
      .filter(([, member]) => member !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member)}`);
    return `{${members.join(',')}}`;
  }
  const text = JSON.stringify(value);
  if (text === undefined || (typeof value === 'number' && !Number.isFinite(value))) {
    throw new TypeError(`Cannot write JSON: value must be JSON: current value is ${String(value)}`);
  }
  return text;
}
