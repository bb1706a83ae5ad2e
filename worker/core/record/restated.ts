import { factorOf, type Units } from '../units/quantity.ts';
import { entryName } from './completed.ts';
import { isDoneAgain } from './done-again.ts';
import { isObject, type JsonObject, member } from './is-object.ts';
import { stepsOf } from './pointer.ts';
import { differences, isSameJson, type StandingChange } from './standing-changes.ts';
import { ENTRY_SECTIONS, type StandingFile } from './standing-file.ts';

/** A part of the standing file that a record states otherwise. */
export interface Restated extends StandingChange {
  /** Pack after which it was otherwise. */
  since: string;
  /** Path in the whole record; of a part that it drops, of the line that drops it. */
  path: readonly (string | number)[];
  /** It is a limit, an arm, a mass or a term. */
  isBinding: boolean;
}

/** Parts of the aircraft, its terms and its schedule that no visit changes without a reason. Patterns of `part`. */
const BINDING = [
  /^\/aircraft\//,
  /^\/lives\/items\/[^/]+\/(of|basis|meter|counters|product|interval|dueAfter|tolerance(Hours|Months))(\/|$)/,
  /^\/lives\/items\/[^/]+\/(lastDone|wasDueAt)(\/|$)/,
  /^\/meters\/readings\/[^/]+\/(of|offsetHours)$/,
  /^\/baseline\/equipment$/,
  /^\/baseline\/(schedules\/[^/]+\/)?(emptyMass|emptyMoment|emptyLateralMoment)$/,
  /^\/baseline\/equipment\/[^/]+(\/(mass|arm|lateralArm|required|equipmentKind|serial|partNumber))?$/,
];

/** Parts that work at a visit changes, so that a difference is a question. */
const ASKED = [
  /^\/units\//,
  /^\/(certificates|meters)$/,
  /^\/meters\/(readings|counters)\/[^/]+$/,
  /^\/certificates\/[^/]+(\/(kind|validUntil|number))?$/,
  /^\/bulletins\/items\/[^/]+(\/(kind|applicability|reason|meter|nextDueDate|nextDueHours|doneOn|document)(\/.*)?)?$/,
  /^\/(electrical|wiring|antennas|surveillance)\//,
];

/** What each visit states for itself: owner, configuration on the scales, products, measured figures. */
const OF_VISIT = [
  /^\/aircraft\/(registration|configuration|owner|operator)(\/|$)/,
  /^\/aircraft\/(engine|propeller|products\/[^/]+)\/serial$/,
  /^\/aircraft\/energyStores\/[^/]+\/(serial|item|healthLimitPercent)$/,
  /^\/(electrical|wiring|antennas|surveillance)\/(.*\/)?serial$/,
];

/** What a visit measures or sets again; if it leaves one out, the figure of the aircraft is lost. */
const OF_VISIT_IF_STATED = [
  /^\/(electrical|wiring|antennas|surveillance)\/(.*\/)?(continuity|flightIdentitySet|measured[A-Z]\w*)$/,
  /^\/antennas\/items\/[^/]+\/(bondMilliohm|standingWaves)(\/|$)/,
];

/** Entries that give the aircraft more places or ways to be loaded; any other new part is a closer limit, or a note. */
const ADDED = /^\/aircraft\/(.*\/)?(stations|categories|configurations)\/[^/]+$/;

/** Sections that a record which names no file repeats. */
const EVERY_RECORD = ['certificates', 'meters'];

const inAny = (patterns: readonly RegExp[], part: string): boolean => patterns.some((pattern) => pattern.test(part));

/**
 * Returns what a whole record states otherwise than the standing file. What was done again at the visit, what left the
 * aircraft, and what each visit states for itself do not count. A record in other units differs in these alone.
 *
 * @param record whole record in the present version
 * @returns empty without a file
 */
export function restatedIn(file: StandingFile | undefined, record: unknown): Restated[] {
  if (!file) return [];
  const whole: unknown = JSON.parse(JSON.stringify(record));
  if (!isObject(whole)) return [];
  const isAlike = isSameJson(whole.units, file.sections.units ?? whole.units);
  const isAsked = (section: string): boolean =>
    whole[section] !== undefined || (EVERY_RECORD.includes(section) && !isObject(whole.standing));
  const stated = isAlike ? Object.keys(file.sections).filter(isAsked) : ['units'];
  return stated
    .flatMap((section) => differences(compared(file.sections, section), compared(whole, section), [section]))
    .filter(({ part }) => inAny([...BINDING, ...ASKED], part) && !inAny(OF_VISIT, part))
    .filter((change) => isRestated(change, file, whole))
    .map((change) => ({
      ...change,
      since: file.pack,
      path: pathIn(whole, change),
      isBinding: inAny(BINDING, change.part),
    }));
}

/** Section of a file or record; a schedule that states its arm has mass times arm, too. */
function compared(of: unknown, section: string): unknown {
  const stated = member(of, section);
  if (section !== 'baseline' || !isObject(stated)) return stated;
  const { schedules } = stated;
  return {
    ...withMoment(stated),
    ...(Array.isArray(schedules) && { schedules: schedules.filter(isObject).map(withMoment) }),
  };
}

function withMoment(schedule: JsonObject): JsonObject {
  const { emptyMass, emptyArm } = schedule;
  if (typeof emptyMass !== 'number' || typeof emptyArm !== 'number') return schedule;
  return { emptyMoment: emptyMass * emptyArm, ...schedule };
}

function isRestated({ part, before, now }: StandingChange, file: StandingFile, whole: JsonObject): boolean {
  if (before === undefined) return ADDED.test(part);
  if (now === undefined ? isAnswered(part, before, { file, whole }) : inAny(OF_VISIT_IF_STATED, part)) return false;
  // What was aboard is kept or removed, but not added.
  if (part.endsWith('/change') && now === 'removed') return false;
  if (part.startsWith('/baseline/') && isCopied({ part, before, now }, file)) return false;
  if (RUNS_ON.test(part) && isLater(before, now)) return false;
  if (HEALTH.test(part) && isWithin(before, now)) return false;
  if (FITTED.test(part) && isOtherProduct(part, file, whole)) return false;
  return now === undefined || !isDoneAgain(stepsOf(part), file, whole);
}

/** Counts and days that only grow. */
const RUNS_ON = /^\/aircraft\/energyStores\/[^/]+\/(cycles|healthMeasuredOn)$/;
const isLater = (before: unknown, now: unknown): boolean =>
  (typeof before === 'number' && typeof now === 'number' && now > before) ||
  (typeof before === 'string' && typeof now === 'string' && now > before);

/** Battery health falls; measured again, it may read some percent higher. Common practice, no source. */
const HEALTH = /^\/aircraft\/energyStores\/[^/]+\/healthPercent$/;
const MEASURED_PERCENT = 2;
const isWithin = (before: unknown, now: unknown): boolean =>
  typeof before === 'number' && typeof now === 'number' && now <= before + MEASURED_PERCENT;

const FITTED = /^\/aircraft\/(engine|propeller|products\/[^/]+)\/fitted(\/|$)/;

/** Whether a product is another than before: its times start again. */
function isOtherProduct(part: string, file: StandingFile, whole: JsonObject): boolean {
  const [, kind = '', name = ''] = stepsOf(part);
  const [before, now] = [file.sections, whole].map((of) => {
    const product = member(member(of, 'aircraft'), kind);
    return member(Array.isArray(product) ? product.find((entry) => entryName(entry) === name) : product, 'serial');
  });
  return before !== now;
}

interface Compared {
  file: StandingFile;
  whole: JsonObject;
}

/** What is open is answered as an open item; what is of an item that was removed goes with it. */
function isAnswered(part: string, before: unknown, { file, whole }: Compared): boolean {
  const [section = '', list, name, ...within] = stepsOf(part);
  if (section === 'lives' && (within.length === 0 || within[0] === 'wasDueAt')) return true;
  // A record that names a file states the bulletins that it assesses and the meters that it reads.
  if (section in ENTRY_SECTIONS && list !== undefined && within.length === 0)
    return isObject(whole.standing) || file.open.some((open) => member(open, 'id') === name);
  const gone = removedIn(whole);
  const item = part.endsWith('/item') ? before : member(before, 'item');
  return part.startsWith('/aircraft/') ? false : gone.has(item) || gone.has(entryName(before));
}

function removedIn(whole: JsonObject): ReadonlySet<unknown> {
  const works = Array.isArray(whole.modifications) ? whole.modifications : [];
  const changes = works.flatMap((work) => (isObject(work) && Array.isArray(work.changes) ? work.changes : []));
  const gone = changes.flatMap((change) => {
    const out = member(change, 'out');
    const isOut = member(change, 'kind') === 'removed' || member(change, 'kind') === 'replaced';
    return Array.isArray(out) ? out.map((line) => member(line, 'item')) : isOut ? [member(change, 'item')] : [];
  });
  return new Set(gone.filter((item) => item !== undefined));
}

const ROUNDED = { share: 0.0005, armMm: 0.5 } as const;

/**
 * Whether a figure of a schedule is that of the file, copied from print: within half a thousandth, and mass times arm within
 * an arm rounded to a millimetre. Our own choice, closer than a weighing can tell.
 */
function isCopied({ part, before, now }: StandingChange, { sections }: StandingFile): boolean {
  if (typeof before !== 'number' || typeof now !== 'number') return false;
  const units = sections.units as Units | undefined;
  const mass = part.endsWith('Moment') ? member(sections.baseline, 'emptyMass') : undefined;
  const rounding = typeof mass === 'number' && units ? (mass * ROUNDED.armMm) / factorOf('arm', units) : 0;
  return Math.abs(now - before) <= ROUNDED.share * Math.abs(before) + rounding;
}

function pathIn(whole: JsonObject, { part, now }: StandingChange): (string | number)[] {
  if (now === undefined) {
    const dropped = member(member(whole, 'standing'), 'without');
    const isIt = (one: unknown): boolean => `${part}/`.startsWith(`${one}/`) || `${one}/`.startsWith(`${part}/`);
    const at = Array.isArray(dropped) ? dropped.findIndex(isIt) : -1;
    if (at >= 0) return ['standing', 'without', at];
  }
  const path: (string | number)[] = [];
  let here: unknown = whole;
  for (const step of stepsOf(part)) {
    if (here === undefined) break;
    const key = Array.isArray(here) ? here.findIndex((entry) => entryName(entry) === step) : step;
    if (key === -1) break;
    here = Array.isArray(here) ? here[Number(key)] : member(here, step);
    path.push(key);
  }
  return path;
}
