import { without } from './completed.ts';
import { isObject } from './is-object.ts';
import { stepsOf } from './pointer.ts';
import { upgrade } from './upgrades.ts';

/**
 * Returns a record that builds on another standing file.
 *
 * @param posted record as posted
 * @param taken parts, by members and names of entries, of which the record takes the value of the file: what it states of
 * them is left out
 * @returns the record, and the parts of which it states nothing
 */
export function takenOver(
  posted: unknown,
  { pack, sha256 }: { pack: string; sha256: string },
  taken: readonly string[],
): { record: unknown; notStated: string[] } {
  const notStated: string[] = [];
  let record: unknown = upgrade(posted);
  for (const part of taken) {
    const less = without(record, stepsOf(part));
    if (less) record = less.value;
    else notStated.push(part);
  }
  if (!isObject(record)) return { record, notStated };
  const before = isObject(record.standing) ? record.standing : {};
  return { record: { ...record, standing: { ...before, pack, sha256 } }, notStated };
}

/** Whether a record states a part, or something within it. */
export const states = (record: unknown, part: string): boolean => without(record, stepsOf(part)) !== undefined;
