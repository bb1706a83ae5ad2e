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

type Answer = NonNullable<Visit['carried']>[number];

/** The parts of a visit that leave something open, or answer for what stood open. */
type CarriedParts = Pick<Visit, 'carried'> & OpenParts;

/** What a visit makes of what stood open before it. */
export interface CarryOver {
  /** Whether earlier packs were asked; where they were not, nothing is known of what they left open. */
  isKnown: boolean;
  /** What stood open when the visit began. */
  before: readonly OpenItem[];
  /** Everything that stands open after the visit; what nobody answered for stands on. */
  standing: OpenItem[];
  /** What of that has no entry of its own in the record: its words are those of an earlier pack. */
  held: OpenItem[];
  /** What stood open and is neither answered for nor in the record. */
  unanswered: OpenItem[];
  /** What is in the record with a later limit than before, was not done since, and is not said to be extended. */
  putOff: { item: OpenItem; now: StatedItem }[];
  /** Answers that name an entry of the record as what stands instead, and there is none. */
  withoutEntry: number[];
  /** Answers that name an entry which binds less, or lacks a limit. */
  unfit: number[];
  /** Answers that say closed of what the record still leaves open, and was not done since. */
  contradicted: number[];
  /** Answers that give more time to what the authority or the maker limits. */
  bindingExtended: number[];
  /** Answers to what does not stand open, or was answered for before. */
  unmatched: number[];
}

/**
 * Carries what stood open over a visit. What the record repeats by kind, identifier and words goes on under its first name; all else
 * is answered for in `carried`, or stands on unanswered.
 *
 * @param known what stood open when the visit began, by its names; undefined where no archive was asked
 * @param at the moment of the assessment
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
    standing: [],
    held: [],
    unanswered: [],
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
    else if (!repeat(item, context) && answer === undefined) result.unanswered.push(item);
  }
  const added = stated.filter((entry) => !taken.has(entry)).map(withoutPath);
  return { ...result, standing: [...result.standing, ...added] };
}

interface Context {
  stated: readonly StatedItem[];
  /** Entries that go on under the name of something that stood open. */
  taken: Set<StatedItem>;
  result: CarryOver;
  answers: readonly Answer[];
}

/** A visit cannot have answered for what a correction of an earlier pack brought later. */
const isAnsweredFor = ({ since }: OpenItem, at: string): boolean =>
  since === undefined || Date.parse(since) <= Date.parse(at);

/** Ends what was closed, unless the record still leaves the very thing open. */
function close(item: OpenItem, index: number, { stated, taken, result }: Context): void {
  const entry = stated.find((each) => isSame(item, each) && !taken.has(each));
  if (!entry || wasDone(item, entry)) return;
  result.contradicted.push(index);
  taken.add(entry);
  result.standing.push(isPutOff(item, entry) ? item : continued(item, entry));
}

/** Goes on with the entry that is named as evidence; where that cannot be, the item stands on as it was. */
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
  // What takes its place stands under a name of its own.
  if (answer === 'superseded') return;
  if (isBinding(item) && isPutOff(item, entry)) result.bindingExtended.push(index);
  taken.add(entry);
  // It goes on under its first name, with the limit of the entry.
  result.standing.push(continued(item, entry));
}

/** Goes on with what the record repeats; false where it has no such entry, and the item stands on as it was. */
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

/** An item as the record has it now, under the name that it always had. */
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

/** A pack that things stand open after. */
interface OpenAfter {
  /** Number of the pack with its aircraft, `Q-SLM-P1`. */
  pack: string;
  /** When its newest issue was sealed. */
  at: string;
  /** A release that was withdrawn closes and extends nothing; what it found open stands, with the earlier of two limits. */
  isWithdrawn?: boolean;
  /** The issues before the newest, the oldest first: what stood in them keeps its name. */
  earlier?: readonly { visit: CarriedParts; at: string }[];
}

/** What stands open after a pack, by its names for the life of the aircraft. */
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

/** Items of a correction have the name of its issue: who answered for an earlier issue cannot have meant them. */
const nameOf = (pack: string, index: number): { issue: string } => ({
  issue: index === 0 ? pack : `${pack}-${index + 1}`,
});

function unnamedAfter(before: readonly OpenItem[], visit: CarriedParts, at: string): OpenItem[] {
  return carryOver(before, visit, at).standing.map((open) =>
    open.item === undefined ? open : { ...open, timesCarried: (open.timesCarried ?? 0) + 1 },
  );
}

/** What stood open with what a withdrawn release found. */
function withFound(before: readonly OpenItem[], stated: readonly StatedItem[]): OpenItem[] {
  const kept = before.map((item) => {
    const found = stated.find((entry) => isSame(item, entry));
    return found ? withEarlierLimits(item, found) : item;
  });
  const added = stated.filter((entry) => !before.some((item) => isSame(item, entry)));
  return [...kept, ...added.map(withoutPath)];
}

interface Naming {
  /** What the new items are named after. */
  issue: string;
  at: string;
  /** What earlier issues of the pack gave names to. */
  names: readonly OpenItem[];
}

/**
 * Items with their names for life, in their order; two of one issue with one identifier are told apart by their kind.
 *
 * @param naming the issue in which those without a name first stand
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
