import {
  type Completed,
  completed,
  entryName,
  INHERITED,
  type Origin,
  STATED,
  statedPath,
  without,
} from './completed.ts';
import { isObject } from './is-object.ts';
import { peopleIn } from './people-in.ts';
import { pointer, stepsOf } from './pointer.ts';
import { VisitRecord } from './record.ts';
import type { RecordIssue } from './record-issue.ts';
import { ENTRY_SECTIONS, NEEDED_SECTIONS, OF_LAST_TIME, type StandingFile, WHOLE_SECTIONS } from './standing-file.ts';
import { pathAsPosted, upgrade } from './upgrades.ts';

/** A person as the workshop knows them, in the form of a record. */
export interface KnownPerson {
  id: string;
  [field: string]: unknown;
}

/** What a record may leave out, because the archive knows it. */
export interface Known {
  /** The standing file that the record names. */
  standing?: StandingFile | undefined;
  people?: readonly KnownPerson[] | undefined;
}

/** A whole record, and what was wrong with its references. */
export interface Resolved {
  /** In the present version if anything was filled in; else exactly as posted. */
  whole: unknown;
  issues: RecordIssue[];
  /** Path in the record as posted of a path in the whole record of the present version. */
  pathAsPosted(path: readonly PropertyKey[]): readonly PropertyKey[];
}

/**
 * Makes a record whole: what it leaves out comes from the standing file that it names, and the people that it names from
 * the table of the workshop. A record that repeats everything is returned unchanged.
 *
 * A record with `kept` that no archive completes was resolved before, and is whole.
 *
 * @param posted parsed JSON of any shape and version
 */
export function resolveRecord(posted: unknown, { standing: file, people = [] }: Known): Resolved {
  const asPosted = {
    whole: posted,
    issues: [],
    pathAsPosted: (path: readonly PropertyKey[]) => pathAsPosted(posted, path),
  };
  if (!isObject(posted)) return asPosted;
  const present = upgrade(posted);
  if (!isObject(present)) return asPosted;
  const { standing } = present;
  if (isObject(standing) && !file && !isObject(standing.kept)) return { ...asPosted, issues: [fileUnknown(standing)] };
  const own: FromFile =
    file && isObject(standing)
      ? completedFrom(present, standing, file)
      : { members: present, origins: new Map(), issues: [] };
  const added = missingPeople(own.members, people);
  if (own.members === present && added.length === 0) return asPosted;
  const stated = Array.isArray(own.members.people) ? own.members.people : [];
  const origin: Origin = { from: 'part', members: new Map([...own.origins, ['people', ofPeople(stated, added)]]) };
  return {
    whole: added.length === 0 ? own.members : { ...own.members, people: [...stated, ...added] },
    issues: own.issues,
    pathAsPosted: (path) => pathAsPosted(posted, statedPath(origin, path)),
  };
}

function missingPeople(record: Readonly<Record<string, unknown>>, known: readonly KnownPerson[]): KnownPerson[] {
  if (known.length === 0) return [];
  const stated = Array.isArray(record.people) ? record.people.map(entryName) : [];
  const wanted = new Set(peopleIn(VisitRecord, record));
  return known.filter(({ id }) => wanted.has(id) && !stated.includes(id));
}

/** Origin of the list of people: those of the workshop follow those of the record. */
const ofPeople = (stated: readonly unknown[], added: readonly unknown[]): Origin => ({
  from: 'list',
  entries: [
    ...stated.map((_, at) => ({ at, origin: STATED })),
    ...added.map(() => ({ at: undefined, origin: INHERITED })),
  ],
});

interface FromFile {
  members: Readonly<Record<string, unknown>>;
  origins: Map<string, Origin>;
  issues: RecordIssue[];
}

function completedFrom(
  record: Readonly<Record<string, unknown>>,
  standing: Readonly<Record<string, unknown>>,
  file: StandingFile,
): FromFile {
  const { sections, issues } = sectionsWithout(file, standing.without);
  if (record.units !== undefined && !sameUnits(record.units, sections.units)) issues.push(unitsDiffer(file));
  const parts = new Map<string, Completed>([['units', { value: sections.units, origin: INHERITED }]]);
  const kept: Record<string, unknown> = { open: file.open, readings: file.readings };
  for (const section of NEEDED_SECTIONS) parts.set(section, completed(record[section], sections[section]));
  for (const section of WHOLE_SECTIONS)
    if (record[section] === undefined) kept[section] = sections[section];
    else parts.set(section, completed(record[section], sections[section]));
  for (const [section, lists] of Object.entries(ENTRY_SECTIONS)) {
    const name = section as keyof typeof ENTRY_SECTIONS;
    const entries = entriesStated(record[section], withoutLastTime(name, record[section], sections[name]), lists);
    if (entries.stated) parts.set(section, entries.stated);
    kept[section] = entries.kept;
  }
  const meters = parts.get('meters');
  if (meters) parts.set('meters', { ...meters, value: withUnmoved(meters.value) });
  const whole = [...parts].filter(([, { value }]) => value !== undefined);
  const { kept: _, ...reference } = standing;
  const members = {
    ...record,
    ...Object.fromEntries(whole.map(([section, { value }]) => [section, value])),
    standing: { ...reference, kept: JSON.parse(JSON.stringify(kept)) },
  };
  return { members, origins: new Map(whole.map(([section, { origin }]) => [section, origin])), issues };
}

/** Returns meters in which a reading at release alone is the reading at arrival too: it did not move. */
function withUnmoved(meters: unknown): unknown {
  if (!isObject(meters)) return meters;
  const both = (list: unknown, [before, after]: readonly [string, string]): unknown =>
    Array.isArray(list) ? list.map((entry) => (isObject(entry) ? { [before]: entry[after], ...entry } : entry)) : list;
  const { readings, counters } = meters;
  return {
    ...meters,
    ...(readings !== undefined && { readings: both(readings, ['inHours', 'outHours']) }),
    ...(counters !== undefined && { counters: both(counters, ['in', 'out']) }),
  };
}

/** Returns a standing section in which the entries that were done again know nothing of the time before. */
function withoutLastTime(name: keyof typeof ENTRY_SECTIONS, stated: unknown, standing: unknown): unknown {
  const ofLastTime = OF_LAST_TIME[name];
  if (!ofLastTime || !isObject(stated) || !isObject(standing)) return standing;
  const { done, others } = ofLastTime;
  const again = itemsOf(stated);
  return {
    ...standing,
    items: itemsOf(standing).map((entry) => {
      const now = again.find((item) => entryName(item) === entryName(entry));
      if (!isObject(entry) || !isObject(now) || !isOtherTime(now[done], entry[done])) return entry;
      const isSame = (clock: string) => readingOn(clock, now[done]) === readingOn(clock, entry[done]);
      const ofThen = others.flatMap((key) => {
        const left = isObject(entry[key]) ? Object.entries(entry[key]).filter(([clock]) => isSame(clock)) : [];
        return left.length > 0 ? [[key, Object.fromEntries(left)] as const] : [];
      });
      const rest = Object.entries(entry).filter(([key]) => key !== done && !others.includes(key));
      return Object.fromEntries([...rest, ...ofThen]);
    }),
  };
}

const itemsOf = ({ items }: Readonly<Record<string, unknown>>): readonly unknown[] =>
  Array.isArray(items) ? items : [];

const readingOn = (clock: string, time: unknown): unknown => (isObject(time) ? time[clock] : undefined);

/** Whether a stated date, or readings on any clock, differ from the standing ones: it was done again. */
function isOtherTime(stated: unknown, standing: unknown): boolean {
  if (stated === undefined) return false;
  if (!isObject(stated) || !isObject(standing)) return stated !== standing;
  return Object.entries(stated).some(([clock, value]) => standing[clock] !== value);
}

/** Completes the entries that a section states; all others are kept. */
function entriesStated(
  stated: unknown,
  standing: unknown,
  lists: readonly string[],
): { stated?: Completed; kept: unknown } {
  if (!isObject(stated))
    return { kept: standing, ...(stated !== undefined && { stated: completed(stated, undefined) }) };
  if (!isObject(standing)) return { kept: undefined, stated: completed(stated, undefined) };
  const entriesOf = (section: Readonly<Record<string, unknown>>, list: string): unknown[] =>
    Array.isArray(section[list]) ? section[list] : [];
  const split = (isWanted: (name: string | undefined, list: string) => boolean) =>
    Object.fromEntries(
      lists.flatMap((list) => {
        const entries = entriesOf(standing, list).filter((entry) => isWanted(entryName(entry), list));
        return entries.length === 0 ? [] : [[list, entries]];
      }),
    );
  const names = Object.fromEntries(lists.map((list) => [list, entriesOf(stated, list).map(entryName)]));
  const rest = Object.fromEntries(Object.entries(standing).filter(([key]) => !lists.includes(key)));
  return {
    stated: completed(stated, { ...rest, ...split((name, list) => names[list]?.includes(name) ?? false) }),
    kept: { ...rest, ...split((name, list) => !names[list]?.includes(name)) },
  };
}

/** Returns the sections of a file without the parts and entries that the record drops. */
function sectionsWithout(
  { pack, sections: all }: StandingFile,
  taken: unknown,
): { sections: StandingFile['sections']; issues: RecordIssue[] } {
  const issues: RecordIssue[] = [];
  let sections: unknown = all;
  for (const [index, at] of (Array.isArray(taken) ? taken : []).entries()) {
    const less = typeof at === 'string' ? without(sections, stepsOf(at)) : undefined;
    if (less) sections = less.value;
    else issues.push(notThere(pack, at, index));
  }
  return { sections: sections as StandingFile['sections'], issues };
}

const sameUnits = (stated: unknown, standing: unknown): boolean =>
  isObject(stated) &&
  isObject(standing) &&
  [...new Set([...Object.keys(stated), ...Object.keys(standing)])].every((key) => stated[key] === standing[key]);

const LONGEST_SHOWN = 60;

/** A stated value of any JSON in a sentence. */
const shown = (value: unknown): string =>
  (typeof value === 'string' ? value : (JSON.stringify(value) ?? '')).slice(0, LONGEST_SHOWN);

const issue = (code: RecordIssue['code'], at: string, sentence: string, remedy: string): RecordIssue => ({
  code,
  severity: 'blocks',
  pointer: at,
  sentence: `Cannot read the record: ${sentence}`,
  remedy,
});

const fileUnknown = ({ pack }: Readonly<Record<string, unknown>>): RecordIssue =>
  issue(
    'STANDING_FILE_UNKNOWN',
    '/standing',
    `the standing file of ${shown(pack)} with this digest is not known here`,
    'Take pack and sha256 from the next record of the aircraft, or state the whole record',
  );

const unitsDiffer = ({ pack }: StandingFile): RecordIssue =>
  issue(
    'STANDING_UNITS_DIFFER',
    '/units',
    `units must be those of the standing file of ${pack}`,
    'Leave units out and use those of the standing file, or state the whole record',
  );

const notThere = (pack: string, at: unknown, index: number): RecordIssue =>
  issue(
    'STANDING_ENTRY_UNKNOWN',
    pointer('standing', 'without', index),
    `the standing file of ${pack} has no ${shown(at)}`,
    'Name a part by its members and the identifiers of entries, as /aircraft/stations/rear-locker',
  );
