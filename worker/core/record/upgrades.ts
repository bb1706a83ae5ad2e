import { isObject } from './is-object.ts';
import { layoutToClass } from './layout-to-class.ts';
import { oneToSeveral } from './one-to-several.ts';
import { type Path, renaming, type UpgradeStep } from './upgrade-step.ts';

/** Version of the record that this code works with. Older ones are upgraded on reading, and kept as posted. */
export const SCHEMA_VERSION = 4;

/** Each change of format adds its step here, with records of the old form in `fixtures/records`. */
const UPGRADES: readonly UpgradeStep[] = [
  renaming(1, [
    { of: ['antennas', 'items', '#', 'groundPlane'], before: 'leastRadius', after: 'minimumRadius' },
    { of: ['antennas', 'items', '#'], before: 'leastSpacing', after: 'minimumSpacing' },
  ]),
  layoutToClass,
  oneToSeveral,
];

/** Returns the version that a record states; undefined if it states none. */
export function versionOf(record: unknown): number | undefined {
  const version = isObject(record) ? record.schemaVersion : undefined;
  return typeof version === 'number' ? version : undefined;
}

/** Returns the steps from the version of a record; none for an unknown version. */
function stepsFrom(version: number | undefined): readonly UpgradeStep[] {
  const first = UPGRADES.findIndex(({ from }) => from === version);
  return first < 0 ? [] : UPGRADES.slice(first);
}

/** Upgrades a record, by default to the current version; anything that is not an object of an older version is returned unchanged. */
export function upgrade(record: unknown, to: number = SCHEMA_VERSION): unknown {
  if (!isObject(record)) return record;
  return stepsFrom(versionOf(record))
    .filter(({ from }) => from < to)
    .reduce((old, step) => ({ ...step.apply(old), schemaVersion: step.from + 1 }), record);
}

/** Returns the path in a record as posted of a field of the current version. */
export function pathAsPosted(posted: unknown, path: Path): Path {
  return stepsFrom(versionOf(posted)).reduceRight((at, step) => step.pathBefore(at), path);
}

/** Returns the path in the current version of a field of version 1. */
export function presentPath(path: Path): Path {
  return UPGRADES.reduce((at, step) => step.pathAfter(at), path);
}
