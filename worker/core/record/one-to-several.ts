import { isObject } from './is-object.ts';
import { type Path, renaming, type UpgradeStep } from './upgrade-step.ts';

const PART = 'surveillance';
const LISTS: ReadonlySet<PropertyKey> = new Set(['altimeters', 'staticSystems']);

const renamed = renaming(3, [
  { of: [PART], before: 'altimeter', after: 'altimeters' },
  { of: [PART], before: 'staticSystem', after: 'staticSystems' },
]);

/** Whether a path of the new version leads into one of the lists. */
const isInList = ([part, list]: Path): boolean => part === PART && list !== undefined && LISTS.has(list);

/** From version 3 to 4: one altimeter test and one static system become lists, with it as the first entry. */
export const oneToSeveral: UpgradeStep = {
  from: 3,
  apply: (record) => {
    const present = renamed.apply(record);
    const part = present[PART];
    if (!isObject(part)) return present;
    const entries = Object.entries(part).map(([key, value]) => [key, LISTS.has(key) ? [value] : value]);
    return { ...present, [PART]: Object.fromEntries(entries) };
  },
  pathBefore: (path) => renamed.pathBefore(isInList(path) ? path.toSpliced(2, 1) : path),
  pathAfter: (path) => {
    const after = renamed.pathAfter(path);
    return isInList(after) && after.length > 2 ? after.toSpliced(2, 0, 0) : after;
  },
};
