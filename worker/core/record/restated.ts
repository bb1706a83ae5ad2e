import { entryName } from './completed.ts';
import { isDoneAgain } from './done-again.ts';
import { isObject, type JsonObject, member } from './is-object.ts';
import { stepsOf } from './pointer.ts';
import { differences, isSame, type StandingChange } from './standing-changes.ts';
import type { StandingFile } from './standing-file.ts';

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
  /^\/baseline\/(emptyMass|emptyArm|emptyMoment|lateralArm)$/,
  /^\/baseline\/schedules(\/|$)/,
  /^\/baseline\/equipment\/[^/]+(\/(mass|arm|lateralArm|required|equipmentKind|serial|partNumber))?$/,
];

/** Parts that work at a visit changes, so that a difference is a question. */
const ASKED = [
  /^\/units\//,
  /^\/(certificates|meters)$/,
  /^\/meters\/(readings|counters)\/[^/]+$/,
  /^\/certificates\/[^/]+(\/(kind|validUntil|number))?$/,
  /^\/bulletins\/items\/[^/]+\/(kind|applicability|meter|nextDueDate|nextDueHours|doneOn|document)(\/|$)/,
  /^\/(electrical|wiring|antennas|surveillance)\//,
];

/** What each visit states for itself: owner, configuration on the scales, products, measured figures. */
const OF_VISIT = [
  /^\/aircraft\/(registration|configuration|owner|operator)(\/|$)/,
  /^\/aircraft\/(engine|propeller|products\/[^/]+)\/serial$/,
  /^\/aircraft\/energyStores\/[^/]+\/(serial|item|healthLimitPercent)$/,
  /^\/(electrical|wiring|antennas|surveillance)\/(.*\/)?(change|serial|continuity|flightIdentitySet|measured[A-Z]\w*)$/,
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
 */
export function restatedIn(file: StandingFile, record: unknown): Restated[] {
  const whole: unknown = JSON.parse(JSON.stringify(record));
  if (!isObject(whole)) return [];
  const isAlike = isSame(whole.units, file.sections.units ?? whole.units);
  const isAsked = (section: string): boolean =>
    whole[section] !== undefined || (EVERY_RECORD.includes(section) && !isObject(whole.standing));
  const stated = isAlike ? Object.keys(file.sections).filter(isAsked) : ['units'];
  return stated
    .flatMap((section) => differences(member(file.sections, section), whole[section], [section]))
    .filter(({ part }) => inAny([...BINDING, ...ASKED], part) && !inAny(OF_VISIT, part))
    .filter((change) => isRestated(change, file, whole))
    .map((change) => ({
      ...change,
      since: file.pack,
      path: pathIn(whole, change),
      isBinding: inAny(BINDING, change.part),
    }));
}

function isRestated({ part, before, now }: StandingChange, file: StandingFile, whole: JsonObject): boolean {
  if (before === undefined) return ADDED.test(part);
  if (now === undefined && isAnswered(part, before, whole)) return false;
  if (part.startsWith('/baseline/') && isRoundedAlike(before, now)) return false;
  if (RUNS_ON.test(part) && now !== undefined && isLater(before, now)) return false;
  if (HEALTH.test(part) && isWithin(before, now)) return false;
  if (FITTED.test(part) && isOtherProduct(part, file, whole)) return false;
  return now === undefined || !isDoneAgain(stepsOf(part), file, whole);
}

/** Counts and days that only grow. */
const RUNS_ON = /^\/aircraft\/energyStores\/[^/]+\/(cycles|healthMeasuredOn)$/;
const isLater = (before: unknown, now: unknown): boolean =>
  typeof before === typeof now && String(before).length <= String(now).length && (before as string) < (now as string);

/** Battery health falls; measured again, it may read some percent higher. */
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

/** Due lines and bulletins are answered as open items; what is of an item that was removed goes with it. */
function isAnswered(part: string, before: unknown, whole: JsonObject): boolean {
  if (/^\/(lives|bulletins)\/items\/[^/]+$/.test(part) || /\/wasDueAt(\/|$)/.test(part)) return true;
  // A record that names a file states the meters that it reads.
  if (part.startsWith('/meters/')) return isObject(whole.standing);
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

/** Whether two figures differ by up to half a thousandth: a schedule may be copied from print. */
const isRoundedAlike = (before: unknown, now: unknown): boolean =>
  typeof before === 'number' && typeof now === 'number' && Math.abs(now - before) <= 0.0005 * Math.abs(before);

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
