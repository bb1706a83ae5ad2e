import fc from 'fast-check';

type Node = Record<string, unknown>;

/** Names that refer to each other now and then, as ids in a record do. */
const IDS = ['left', 'right', 'edda', 'rufus', 'a', 'b', 'L', 'R', '1'];
const DATES = ['2026-09-18', '2024-02-29', '1900-01-01', '2099-12-31'];

/**
 * Values that fit a node of the JSON Schema of the record: so the door opens, and what stands behind it meets combinations
 * that no workshop would send.
 */
export function fitting(node: Node): fc.Arbitrary<unknown> {
  if (Array.isArray(node.oneOf)) return fc.oneof(...(node.oneOf as Node[]).map(fitting));
  if ('const' in node) return fc.constant(node.const);
  if (Array.isArray(node.enum)) return fc.constantFrom(...(node.enum as unknown[]));
  if (node.type === 'object') return fittingObject(node);
  if (node.type === 'array') {
    const minLength = Number(node.minItems ?? 0);
    const maxLength = Math.max(minLength, Math.min(Number(node.maxItems ?? 3), 3));
    return fc.array(fitting(node.items as Node), { minLength, maxLength });
  }
  if (node.type === 'string') return fittingText(node);
  if (node.type === 'boolean') return fc.boolean();
  return fittingNumber(node);
}

function fittingObject({ properties, required }: Node): fc.Arbitrary<unknown> {
  // Plain data, such as what is kept of a standing file.
  if (properties === undefined)
    return fc.dictionary(fc.constantFrom('open', ...IDS), fc.jsonValue({ maxDepth: 2 }), { maxKeys: 3 });
  const needed = new Set(required as string[] | undefined);
  const fields = Object.entries(properties as Record<string, Node>).map(([name, field]) => {
    const value = fitting(field);
    const absent = { weight: 3, arbitrary: fc.constant(undefined) };
    return [name, needed.has(name) ? value : fc.oneof(absent, { weight: 1, arbitrary: value })] as const;
  });
  return fc.record(Object.fromEntries(fields));
}

function fittingText({ format, pattern, examples, minLength, maxLength }: Node): fc.Arbitrary<unknown> {
  const example = fc.constantFrom(...((examples as unknown[] | undefined) ?? ['x']));
  if (format === 'date') return fc.constantFrom(...DATES);
  if (format === 'date-time') return fc.constantFrom(...DATES.map((date) => `${date}T15:10:00-05:00`));
  if (String(pattern).startsWith('^[A-Za-z0-9]')) return fc.constantFrom(...IDS);
  if (String(pattern).startsWith('^[0-9a-f]{64}')) return fc.constant('0'.repeat(64));
  const bounds = { minLength: Number(minLength ?? 0), maxLength: Math.min(Number(maxLength ?? 20), 20) };
  return fc.oneof({ weight: 4, arbitrary: example }, { weight: 1, arbitrary: fc.string(bounds) });
}

function fittingNumber({ type, minimum, maximum, examples }: Node): fc.Arbitrary<unknown> {
  const min = Number(minimum ?? -1e9);
  const max = Number(maximum ?? 1e9);
  const anywhere = type === 'integer' ? fc.integer({ min, max }) : fc.double({ min, max, noNaN: true });
  const next = type === 'integer' ? [0, 1] : [0, 1e-300, -1e-300];
  const close = next.filter((value) => value >= min && value <= max);
  const usual = fc.constantFrom(min, max, ...close, ...((examples as number[] | undefined) ?? []));
  return fc.oneof(usual, anywhere);
}
