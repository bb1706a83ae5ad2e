import { entryName } from './completed.ts';
import { isObject } from './is-object.ts';
import { pointer } from './pointer.ts';
import type { StandingFile } from './standing-file.ts';

/** A difference between two standing files. */
export interface StandingChange {
  /** Path by members and names of entries, such as `/aircraft/stations/rear-locker/maximumMass`. */
  part: string;
  /** Left out if it was not there before. */
  before?: unknown;
  /** Left out if it no longer exists. */
  now?: unknown;
}

/** Returns what differs between the sections of two standing files, part by part. */
export function standingChanges(before: StandingFile, now: StandingFile): StandingChange[] {
  return differences(before.sections, now.sections, []);
}

/** Returns what differs between two JSON values: members and named entries one by one, anything else whole. */
export function differences(before: unknown, now: unknown, path: readonly string[]): StandingChange[] {
  const members = [membersOf(before), membersOf(now)] as const;
  const [old, current] = members;
  if (!old || !current) return isSameJson(before, now) ? [] : [{ part: pointer(...path), before, now }];
  return [...new Set([...old.keys(), ...current.keys()])].flatMap((key) =>
    differences(old.get(key), current.get(key), [...path, key]),
  );
}

/** Returns the members of a part, or the entries of a list by name; undefined for a value without them. */
function membersOf(value: unknown): ReadonlyMap<string, unknown> | undefined {
  if (isObject(value)) return new Map(Object.entries(value));
  if (!Array.isArray(value)) return undefined;
  const named = value.map((entry) => [entryName(entry), entry] as const);
  const names = new Set(named.map(([name]) => name));
  const isNamed = names.size === value.length && !names.has(undefined);
  return isNamed ? new Map(named as [string, unknown][]) : undefined;
}

/** Whether two JSON values have the same content, independent of the order of members. */
export function isSameJson(one: unknown, other: unknown): boolean {
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((value, index) => isSameJson(value, other[index]));
  if (!isObject(one) || !isObject(other)) return one === other;
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length && keys.every((key) => isSameJson(one[key], other[key]));
}
