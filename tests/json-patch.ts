/** An operation of a JSON Patch (RFC 6902), as far as the fixtures use it. */
export type Operation = { op: 'add' | 'replace'; path: string; value: unknown } | { op: 'remove'; path: string };

type Container = Record<string, unknown> | unknown[];

/**
 * A copy of a JSON value with operations applied.
 *
 * @throws RangeError where an operation names a place that is not there: a fixture must not miss its mark in silence
 */
export function patched(target: unknown, operations: readonly Operation[]): unknown {
  const copy = structuredClone(target);
  for (const operation of operations) apply(copy, operation);
  return copy;
}

function apply(root: unknown, operation: Operation): void {
  const steps = stepsOf(operation.path);
  const last = steps.pop() ?? '';
  const parent = valueAt(root, `/${steps.join('/')}`.replace(/\/$/, '')) as Container | undefined;
  const isThere = typeof parent === 'object' && parent !== null && (operation.op === 'add' || last in parent);
  if (!isThere) throw new RangeError(`Cannot ${operation.op}: there must be a value at ${operation.path}`);
  if (Array.isArray(parent)) {
    const index = last === '-' ? parent.length : Number(last);
    if (operation.op === 'remove') parent.splice(index, 1);
    else parent.splice(index, operation.op === 'add' ? 0 : 1, operation.value);
  } else if (operation.op === 'remove') delete parent[last];
  else parent[last] = operation.value;
}

const stepsOf = (pointer: string): string[] => pointer.split('/').slice(1);

/** The value that a JSON pointer (RFC 6901, without escapes) names; undefined where there is none. */
export function valueAt(root: unknown, pointer: string): unknown {
  return stepsOf(pointer).reduce<unknown>(
    (at, step) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[step] : undefined),
    root,
  );
}
