import { entryName } from './completed.ts';
import { isObject, type JsonObject, member } from './is-object.ts';
import type { StandingFile } from './standing-file.ts';

/**
 * Whether a part of a due line or bulletin is of something that was done again at the visit, so that its term starts again.
 *
 * @param path steps of the part, as in `lives, items, L01, lastDone, date`
 */
export function isDoneAgain(path: readonly string[], file: StandingFile, whole: JsonObject): boolean {
  const [section, list, name, field] = path;
  if (section === 'lives' && (field === 'lastDone' || field === 'wasDueAt'))
    return isDoneNow(member(entryOf(whole, section, list, name), 'lastDone'), whole);
  if (section !== 'bulletins' || !(field?.startsWith('nextDue') || field === 'doneOn')) return false;
  const [before, now] = [file.sections, whole].map((of) => member(entryOf(of, section, list, name), 'doneOn'));
  return before !== now && isOfVisit(now, whole);
}

function entryOf(of: unknown, section: string, list = '', name = ''): unknown {
  const entries = member(member(of, section), list);
  return Array.isArray(entries) ? entries.find((entry) => entryName(entry) === name) : undefined;
}

/** Whether something was done at the visit: by its day, or without one by a reading that no meter had before. */
function isDoneNow(done: unknown, whole: JsonObject): boolean {
  const date = member(done, 'date');
  if (date !== undefined || !isObject(done)) return isOfVisit(date, whole);
  const inHours = readingsIn(whole, 'readings', 'inHours');
  const landings = member(whole.meters, 'landingsIn') ?? member(whole.meters, 'landings');
  const counted = [...readingsIn(whole, 'counters', 'in'), ...(typeof landings === 'number' ? [landings] : [])];
  return Object.entries(done).every(([clock, value]) =>
    (clock === 'hours' ? inHours : counted).some((reading) => typeof value === 'number' && value >= reading),
  );
}

function readingsIn(whole: JsonObject, list: string, at: string): number[] {
  const entries = member(whole.meters, list);
  return (Array.isArray(entries) ? entries : [])
    .map((entry) => member(entry, at))
    .filter((value) => typeof value === 'number');
}

/** Whether a day is missing, or one of the visit. */
function isOfVisit(day: unknown, whole: unknown): boolean {
  const visit = member(whole, 'visit');
  const [from, until] = ['arrivedAt', 'workEndedAt'].map((key) => member(visit, key));
  if (typeof day !== 'string') return true;
  const isAfter = typeof from !== 'string' || day >= from.slice(0, 10);
  return isAfter && (typeof until !== 'string' || day <= until.slice(0, 10));
}
