import type { Visit } from '../../record/visit.ts';
import {
  canExtend,
  canSupersede,
  isBinding,
  isPutOff,
  isSame,
  type OpenItem,
  wasDone,
  withEarlierLimits,
} from './open-item.ts';
import { type OpenParts, type StatedItem, standsOpen } from './stands-open.ts';

// An open item is named by pack number and identifier, `Q-SLM-P1/F4`: the next record may use the same identifier
// again. By number and not issue, so that a correction keeps the names. An item that is repeated with its kind,
// identifier and words keeps its first name. Everything else needs an answer: silence closes nothing.

type Answer = NonNullable<Visit['carried']>[number];

/** Parts of a visit that leave items open, or respond to open ones. */
type CarriedParts = Pick<Visit, 'carried' | 'standing'> & OpenParts;

/** Open items before a visit, and their state after it. */
export interface CarryOver {
  /** Set if earlier packs were consulted; otherwise the items that they left open are unknown. */
  isKnown: boolean;
  /** Items open at the start of the visit. */
  before: readonly OpenItem[];
  /** Items that the record leaves open. */
  stated: readonly StatedItem[];
  /** All items open after the visit; an item without a response stays open. */
  standing: OpenItem[];
  /** Those of them without their own entry in the record: their words are those of an earlier pack. */
  held: OpenItem[];
  /** Items that were open, without a response and without an entry in the record. */
  unanswered: OpenItem[];
  /** The same in a record that names the standing file: they stay open, and nobody decided anything. */
  untouched: OpenItem[];
  /** Items with a later limit in the record than before, not done since, and not marked as extended. */
  putOff: { item: OpenItem; now: StatedItem }[];
  /** Responses that name a replacement entry that is not in the record. */
  withoutEntry: number[];
  /** Responses that name an entry which binds less, or lacks a limit. */
  unfit: number[];
  /** Responses that say closed of items that the record still leaves open, not done since. */
  contradicted: number[];
  /** Responses that extend a limit of the authority or the manufacturer. */
  bindingExtended: number[];
  /** Responses to items that are not open, or had a response before. */
  unmatched: number[];
}

/**
 * Carries open items over a visit. An item that the record repeats by kind, identifier and words keeps its first name;
 * any other has a response in `carried`, or stays open without one.
 *
 * @param known items open at the start of the visit, with their names; undefined if no archive was consulted
 * @param at time of the assessment
 * @source common practice, no source
 */
export function carryOver(known: readonly OpenItem[] | undefined, visit: CarriedParts, at: string): CarryOver {
  const before = known ?? [];
  const stated = standsOpen(visit, at);
  const answers = visit.carried ?? [];
  const taken = new Set<StatedItem>();
  const result: CarryOver = {
    isKnown: known !== undefined,
    before,
    stated,
    standing: [],
    held: [],
    unanswered: [],
    untouched: [],
    putOff: [],
    withoutEntry: [],
    unfit: [],
    contradicted: [],
    bindingExtended: [],
    unmatched: unmatchedIn(answers, before),
  };
  const context = { stated, taken, result, answers };
  for (const item of before) {
    const index = isAnsweredFor(item, at) ? answers.findIndex((answer) => answer.item === item.item) : -1;
    const answer = answers[index]?.answer;
    if (answer === 'closed') close(item, index, context);
    else if (answer === 'extended' || answer === 'superseded') replace(item, index, context);
    else if (!repeat(item, context) && answer === undefined)
      (visit.standing ? result.untouched : result.unanswered).push(item);
  }
  const added = stated.filter((entry) => !taken.has(entry)).map(withoutPath);
  return { ...result, standing: [...result.standing, ...added] };
}

interface Context {
  stated: readonly StatedItem[];
  /** Entries that continue an open item under its name. */
  taken: Set<StatedItem>;
  result: CarryOver;
  answers: readonly Answer[];
}

/** A visit cannot respond to an item that a correction of an earlier pack added later. */
const isAnsweredFor = ({ since }: OpenItem, at: string): boolean =>
  since === undefined || Date.parse(since) <= Date.parse(at);

/** Closes an item, unless the record still leaves it open. */
function close(item: OpenItem, index: number, { stated, taken, result }: Context): void {
  const entry = stated.find((each) => isSame(item, each) && !taken.has(each));
  if (!entry || wasDone(item, entry)) return;
  result.contradicted.push(index);
  taken.add(entry);
  result.standing.push(isPutOff(item, entry) ? item : continued(item, entry));
}

/** Continues an item with the entry named as evidence; if that is not possible, the item stays unchanged. */
function replace(item: OpenItem, index: number, { stated, taken, result, answers }: Context): void {
  const { answer, evidence } = answers[index] as Answer;
  const entries = stated.filter(({ id }) => id === evidence);
  const can = answer === 'extended' ? canExtend : canSupersede;
  const entry = entries.find((each) => can(item, each) && !taken.has(each));
  if (!entry) {
    (entries.length === 0 ? result.withoutEntry : result.unfit).push(index);
    hold(item, result);
    return;
  }
  // Its replacement has its own name.
  if (answer === 'superseded') return;
  if (isBinding(item) && isPutOff(item, entry)) result.bindingExtended.push(index);
  taken.add(entry);
  // It keeps its first name, with the limit of the entry.
  result.standing.push(continued(item, entry));
}

/** Continues an item with the entry that repeats it; false if the record has no such entry, and the item stays unchanged. */
function repeat(item: OpenItem, { stated, taken, result }: Context): boolean {
  const now = stated.find((entry) => isSame(item, entry) && !taken.has(entry));
  if (!now) {
    hold(item, result);
    return false;
  }
  taken.add(now);
  if (isPutOff(item, now)) result.putOff.push({ item, now });
  result.standing.push(isPutOff(item, now) ? item : continued(item, now));
  return true;
}

function hold(item: OpenItem, { standing, held }: CarryOver): void {
  standing.push(item);
  held.push(item);
}

/** Returns an item with the data of the current record, under its first name. */
function continued({ item, since, timesCarried }: OpenItem, entry: StatedItem): OpenItem {
  return {
    ...withoutPath(entry),
    ...(item !== undefined && { item }),
    ...(since !== undefined && { since }),
    ...(timesCarried !== undefined && { timesCarried }),
  };
}

function withoutPath({ path: _, ...item }: StatedItem): OpenItem {
  return item;
}

function unmatchedIn(answers: readonly Answer[], before: readonly OpenItem[]): number[] {
  return answers.flatMap(({ item }, index) => {
    const isKnown = before.some((open) => open.item === item);
    const isFirst = answers.findIndex((other) => other.item === item) === index;
    return isKnown && isFirst ? [] : [index];
  });
}

/** A pack after which items are open. */
interface OpenAfter {
  /** Number of the pack with its aircraft, `Q-SLM-P1`. */
  pack: string;
  /** Time at which its newest issue was sealed. */
  at: string;
  /** A withdrawn release closes and extends nothing; items that it found open stay open, with the earlier of two limits. */
  isWithdrawn?: boolean;
  /** Issues before the newest, the oldest first: their items keep their names. */
  earlier?: readonly { visit: CarriedParts; at: string }[];
}

/** Returns the items open after a pack, with their names for the life of the aircraft. */
export function openAfter(before: readonly OpenItem[], visit: CarriedParts, pack: OpenAfter): OpenItem[] {
  const { earlier = [], isWithdrawn = false } = pack;
  const names: OpenItem[] = [];
  for (const [index, issue] of earlier.entries()) {
    const named = withNames(unnamedAfter(before, issue.visit, issue.at), {
      names,
      at: issue.at,
      ...nameOf(pack.pack, index),
    });
    names.push(...named.filter(({ item }) => ![...before, ...names].some((known) => known.item === item)));
  }
  const after = isWithdrawn ? withFound(before, standsOpen(visit, pack.at)) : unnamedAfter(before, visit, pack.at);
  return withNames(after, { names, at: pack.at, ...nameOf(pack.pack, earlier.length) });
}

/** Items of a correction have the name of its issue: a response to an earlier issue cannot have meant them. */
const nameOf = (pack: string, index: number): { issue: string } => ({
  issue: index === 0 ? pack : `${pack}-${index + 1}`,
});

function unnamedAfter(before: readonly OpenItem[], visit: CarriedParts, at: string): OpenItem[] {
  const { standing, untouched } = carryOver(before, visit, at);
  return standing.map((open) =>
    open.item === undefined || untouched.includes(open)
      ? open
      : { ...open, timesCarried: (open.timesCarried ?? 0) + 1 },
  );
}

/** Adds the items that a withdrawn release found to those open before. */
function withFound(before: readonly OpenItem[], stated: readonly StatedItem[]): OpenItem[] {
  const kept = before.map((item) => {
    const found = stated.find((entry) => isSame(item, entry));
    return found ? withEarlierLimits(item, found) : item;
  });
  const added = stated.filter((entry) => !before.some((item) => isSame(item, entry)));
  return [...kept, ...added.map(withoutPath)];
}

interface Naming {
  /** Issue that names the new items. */
  issue: string;
  at: string;
  /** Items that earlier issues of the pack have named. */
  names: readonly OpenItem[];
}

/**
 * Returns items with their names for life, in their order; two items of one issue with one identifier are distinguished
 * by their kind.
 *
 * @param naming the issue in which items without a name are new
 */
export function withNames(items: readonly OpenItem[], { issue, at, names }: Naming): OpenItem[] {
  const taken = new Set(items.flatMap(({ item }) => (item === undefined ? [] : [item])));
  return items.map((each) => {
    if (each.item !== undefined) return each;
    const known = names.find((name) => isSame(name, each) && name.item !== undefined && !taken.has(name.item));
    const short = `${issue}/${each.id}`;
    const item = known?.item ?? (taken.has(short) ? `${short}.${each.kind}` : short);
    taken.add(item);
    return { ...each, item, since: known?.since ?? at };
  });
}
