/** Fields that later rules require, and that a record of an old version may have too. */
const LATER = ['equipmentKind', 'critical', 'duringRun', 'of', 'readBack', 'extent', 'certificate', 'movement'];
/** Fields in which the old record contradicted itself. */
const CORRECTED = ['emitterCategory', 'parts', 'watts'];

type Part = Record<string, unknown>;

const isPart = (value: unknown): value is Part => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Adds the fields that later rules require to an old record, from a later record of the same visit. */
export function withLaterFields<Old>(old: Old, later: unknown): Old {
  if (Array.isArray(old))
    return old.map((entry) =>
      withLaterFields(entry, Array.isArray(later) ? later.find((other) => isSame(entry, other)) : undefined),
    ) as Old;
  if (!isPart(old) || !isPart(later)) return old;
  const isAdded = (key: string): boolean => (LATER.includes(key) && !(key in old)) || CORRECTED.includes(key);
  const added = Object.keys(later)
    .filter(isAdded)
    .map((key) => [key, later[key]]);
  const members = Object.entries(old).map(([key, value]) => [key, withLaterFields(value, later[key])]);
  return Object.fromEntries([...members, ...added]) as Old;
}

const nameOf = (entry: unknown): unknown =>
  isPart(entry) ? (entry.id ?? entry.item ?? entry.axis ?? (entry.by as Part)?.id) : entry;
const isSame = (one: unknown, other: unknown): boolean => nameOf(one) !== undefined && nameOf(one) === nameOf(other);
