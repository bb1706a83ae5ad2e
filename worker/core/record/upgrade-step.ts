/** A way into a record: keys of objects and positions in lists. */
export type Path = readonly PropertyKey[];

/** A step from one version of the record to the next. Forward only, and never removed: old packs stay readable. */
export interface UpgradeStep {
  /** The version that it starts from; it ends at the next. */
  from: number;
  /** The record in the next version, apart from `schemaVersion`; what does not fit the old schema is carried along. */
  apply(record: Record<string, unknown>): Record<string, unknown>;
  /** Where a field of the next version is in the old record. */
  pathBefore(path: Path): Path;
  /** Where a field of the old record is in the next version. */
  pathAfter(path: Path): Path;
}

/** A field that has another name in the next version. */
export interface Rename {
  /** The part that contains it; `#` is any entry of a list. */
  of: readonly string[];
  before: string;
  after: string;
}

/**
 * A step that renames fields, one after the other.
 *
 * The two names are exchanged. So an old record that already has the new name keeps it under the old one, where the schema refuses it, and each
 * field has one place in both versions.
 */
export function renaming(from: number, renames: readonly Rename[]): UpgradeStep {
  return {
    from,
    apply: (record) => renames.reduce((value, rename) => renamedAt(value, rename.of, rename), record),
    pathBefore: (path) => renames.reduceRight(renamedPath, path),
    pathAfter: (path) => renames.reduce(renamedPath, path),
  };
}

const otherName = <Key extends PropertyKey>(key: Key, { before, after }: Rename): Key | string =>
  key === before ? after : key === after ? before : key;

function renamedPath(path: Path, rename: Rename): Path {
  const { of } = rename;
  const key = path[of.length];
  if (key === undefined || !of.every((step, index) => step === '#' || step === path[index])) return path;
  return path.with(of.length, otherName(key, rename));
}

function renamedAt<Value>(value: Value, way: readonly string[], rename: Rename): Value;
function renamedAt(value: unknown, [step, ...way]: readonly string[], rename: Rename): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (step === '#') return Array.isArray(value) ? value.map((entry) => renamedAt(entry, way, rename)) : value;
  if (Array.isArray(value)) return value;
  const entries = Object.entries(value).map(([key, within]) => {
    if (step === undefined) return [otherName(key, rename), within];
    return [key, key === step ? renamedAt(within, way, rename) : within];
  });
  return Object.fromEntries(entries);
}
