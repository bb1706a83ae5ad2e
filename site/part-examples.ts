import { exampleRecord } from '../worker/embedded/example-visit.ts';

/** Records that examples are taken from: the first that has a part gives it. */
const SOURCES = ['weighing-only', 'nose-wheel-full', 'trike'];
/** So many entries of a list tell enough. */
const MOST_SHOWN = 3;

type Value = string | number | boolean | null | readonly Value[] | { readonly [name: string]: Value };

/** A part of an invented record, lists cut short; undefined where no record has it. */
export function partExample(name: string): Value | undefined {
  const found = SOURCES.map((source) => (exampleRecord(source) as unknown as Record<string, Value>)[name]);
  const part = found.find((value) => value !== undefined);
  return part === undefined ? undefined : shortened(part);
}

function shortened(value: Value): Value {
  if (Array.isArray(value)) return value.slice(0, MOST_SHOWN).map(shortened);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, shortened(inner)]));
}
