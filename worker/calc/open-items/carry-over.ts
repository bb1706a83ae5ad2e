import type { Visit } from '../../visit/visit.ts';
import { isPutOff, isSame, type OpenItem } from './open-item.ts';
import { type StatedItem, standsOpen } from './stands-open.ts';

type Answer = NonNullable<Visit['carried']>[number];

/** What a visit makes of what stood open before it. */
export interface CarryOver {
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
  /** Answers to what does not stand open, or was answered for before. */
  unmatched: number[];
}

/**
 * Carries what stood open over a visit. What the record repeats by kind, identifier and words goes on under its first name; all else
 * is answered for in `carried`, or stands on unanswered.
 *
 * @param before what stood open when the visit began, by its names
 * @param at the moment of the assessment
 * @source common practice, no source
 */
export function carryOver(before: readonly OpenItem[], visit: Visit, at: string): CarryOver {
  const stated = standsOpen(visit, at);
  const answers = visit.carried ?? [];
  const taken = new Set<StatedItem>();
  const result: CarryOver = {
    before,
    standing: [],
    held: [],
    unanswered: [],
    putOff: [],
    withoutEntry: [],
    unmatched: unmatchedIn(answers, before),
  };
  for (const item of before) {
    const index = answers.findIndex((answer) => answer.item === item.item);
    const answer = answers[index];
    if (!answer || answer.answer === 'repeated') {
      if (!repeat(item, stated, taken, result) && !answer) result.unanswered.push(item);
      continue;
    }
    const entry = namesEntry(answer) ? entryNamed(stated, answer.evidence) : undefined;
    if (namesEntry(answer) && !entry) {
      result.withoutEntry.push(index);
      hold(item, result);
    }
    // It goes on under its first name with the limit of the entry; what takes its place stands under a name of its own.
    if (answer.answer === 'extended' && entry) result.standing.push(continued(item, entry));
    if (answer.answer === 'extended' && entry) taken.add(entry);
  }
  const added = stated.filter((entry) => !taken.has(entry)).map(withoutPath);
  return { ...result, standing: [...result.standing, ...added] };
}

/** Goes on with what the record repeats; false where it has no such entry, and the item stands on as it was. */
function repeat(item: OpenItem, stated: readonly StatedItem[], taken: Set<StatedItem>, result: CarryOver): boolean {
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

/** Extended and superseded name what stands from now on. */
const namesEntry = ({ answer }: Answer): boolean => answer === 'extended' || answer === 'superseded';

const entryNamed = (stated: readonly StatedItem[], id: string | undefined): StatedItem | undefined =>
  stated.find((entry) => entry.id === id);

/** An item as the record has it now, under the name that it always had. */
function continued(item: OpenItem, entry: StatedItem): OpenItem {
  return { ...withoutPath(entry), ...(item.item !== undefined && { item: item.item }) };
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

/**
 * What stands open after a pack, by its names for the life of the aircraft.
 *
 * @param pack number of the pack with its aircraft, `Q-SLM-P1`
 * @param isWithdrawn a release that was withdrawn closes and extends nothing; what it found open stands
 */
export function openAfter(
  before: readonly OpenItem[],
  visit: Visit,
  { pack, at, isWithdrawn = false }: { pack: string; at: string; isWithdrawn?: boolean },
): OpenItem[] {
  if (!isWithdrawn) return named(carryOver(before, visit, at).standing, pack);
  const added = standsOpen(visit, at).filter((entry) => !before.some((item) => isSame(item, entry)));
  return named([...before, ...added.map(withoutPath)], pack);
}

/**
 * Items with their names for life, in their order; two of one pack with one identifier are told apart by their kind.
 *
 * @param pack number of the pack with its aircraft in which those without a name first stand
 */
export function named(items: readonly OpenItem[], pack: string): OpenItem[] {
  const names = new Set(items.flatMap(({ item }) => (item === undefined ? [] : [item])));
  return items.map((item) => {
    if (item.item !== undefined) return item;
    const short = `${pack}/${item.id}`;
    const name = names.has(short) ? `${short}.${item.kind}` : short;
    names.add(name);
    return { ...item, item: name };
  });
}
