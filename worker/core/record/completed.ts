import { isObject } from './is-object.ts';

/**
 * Where the parts of a completed value come from: as stated, inherited whole, or a mixture. For each entry of a
 * mixed list `at` is its position as stated; undefined if it is inherited.
 */
export type Origin =
  | { from: 'stated' }
  | { from: 'inherited' }
  | { from: 'part'; members: ReadonlyMap<string, Origin> }
  | { from: 'list'; entries: readonly { at: number | undefined; origin: Origin }[] };

export interface Completed {
  value: unknown;
  origin: Origin;
}

export const STATED: Origin = { from: 'stated' };
export const INHERITED: Origin = { from: 'inherited' };

/** Fields that name an entry of a list, in the order of search. */
const NAMES = ['id', 'mark', 'pin', 'configuration'] as const;

/** Returns the name of an entry of a list; undefined without one. */
export function entryName(entry: unknown): string | undefined {
  if (!isObject(entry)) return undefined;
  const field = NAMES.find((name) => typeof entry[name] === 'string');
  return field && String(entry[field]);
}

/**
 * Completes a stated JSON value from a standing one: parts member by member, lists entry by entry by their names, in the
 * standing order. A list without names, or any other value, is used as stated.
 *
 * @example completed({ id: 'L04', lastDone }, { id: 'L04', item, interval })  // item and interval are inherited
 */
export function completed(stated: unknown, standing: unknown): Completed {
  if (stated === undefined) return { value: standing, origin: INHERITED };
  if (isObject(stated) && isObject(standing)) return completedPart(stated, standing);
  if (Array.isArray(stated) && Array.isArray(standing) && [...stated, ...standing].some(isNamed))
    return completedList(stated, standing);
  return { value: stated, origin: STATED };
}

const isNamed = (entry: unknown): boolean => entryName(entry) !== undefined;

function completedPart(
  stated: Readonly<Record<string, unknown>>,
  standing: Readonly<Record<string, unknown>>,
): Completed {
  const keys = [...new Set([...Object.keys(standing), ...Object.keys(stated)])];
  const members = keys.map((key) => [key, completed(own(stated, key), own(standing, key))] as const);
  return {
    value: Object.fromEntries(members.map(([key, { value }]) => [key, value])),
    origin: { from: 'part', members: new Map(members.map(([key, { origin }]) => [key, origin])) },
  };
}

const own = (value: Readonly<Record<string, unknown>>, key: string): unknown =>
  Object.hasOwn(value, key) ? value[key] : undefined;

function completedList(stated: readonly unknown[], standing: readonly unknown[]): Completed {
  const taken = new Set<number>();
  const entries = standing.map((entry) => {
    const name = entryName(entry);
    const at = stated.findIndex((other, index) => !taken.has(index) && name !== undefined && entryName(other) === name);
    if (at < 0) return { at: undefined, value: entry, origin: INHERITED };
    taken.add(at);
    return { at, ...completed(stated[at], entry) };
  });
  const added = stated.flatMap((value, at) => (taken.has(at) ? [] : [{ at, value, origin: STATED }]));
  const all = [...entries, ...added];
  return {
    value: all.map(({ value }) => value),
    origin: { from: 'list', entries: all.map(({ at, origin }) => ({ at, origin })) },
  };
}

/**
 * Returns the path, in the value as stated, of a path in the completed value. What is inherited has none: its path
 * ends at the innermost part or list to which a correction would be added.
 */
export function statedPath(origin: Origin, path: readonly PropertyKey[]): PropertyKey[] {
  const [step, ...rest] = path;
  if (step === undefined || origin.from === 'stated') return [...path];
  if (origin.from === 'inherited') return beforeFirstList(path);
  if (origin.from === 'part') return [step, ...statedPath(origin.members.get(String(step)) ?? STATED, rest)];
  const entry = origin.entries[Number(step)];
  if (!entry) return [...path];
  return entry.at === undefined ? [] : [entry.at, ...statedPath(entry.origin, rest)];
}

const POSITION = /^\d+$/;

function beforeFirstList(path: readonly PropertyKey[]): PropertyKey[] {
  const list = path.findIndex((step) => POSITION.test(String(step)));
  return list < 0 ? [...path] : path.slice(0, list);
}

/** Returns a value without the part or entry at a path of member names and entry names; undefined without one. */
export function without(value: unknown, [step, ...rest]: readonly string[]): { value: unknown } | undefined {
  if (step === undefined) return undefined;
  if (Array.isArray(value)) {
    const index = value.findIndex((entry) => entryName(entry) === step);
    if (index < 0) return undefined;
    if (rest.length === 0) return { value: value.toSpliced(index, 1) };
    const inner = without(value[index], rest);
    return inner && { value: value.with(index, inner.value) };
  }
  if (!isObject(value) || !Object.hasOwn(value, step)) return undefined;
  const others = Object.entries(value).filter(([key]) => key !== step);
  if (rest.length === 0) return { value: Object.fromEntries(others) };
  const inner = without(value[step], rest);
  return inner && { value: Object.fromEntries([...others, [step, inner.value]]) };
}
