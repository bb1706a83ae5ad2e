import type { Results } from '../../../worker/core/calc/results.ts';
import { failingIn, isLarge } from './failing.ts';
import { harmIn } from './figures.ts';
import { JUDGED_LIMITS } from './judged-limits.ts';
import { JUDGED_SINGLE } from './judged-single.ts';
import { usually } from './judged-usually.ts';
import { JUDGED_WORK } from './judged-work.ts';
import { type Around, CLASSES, type Class, covers, type Ground, type Judgement, type Verdict } from './judgement.ts';
import { LIMITS_KEPT } from './limits-kept.ts';
import { entries, isPart } from './look.ts';
import { unauthorised } from './may-do.ts';
import type { Change, Operator } from './operators.ts';
import { type Json, type Place, valueAt } from './place.ts';
import { isOfItsItem, isStatedElsewhere, type Stated, statedIn } from './stated-twice.ts';
import type { Statement } from './statement.ts';
import { EVIDENCE_KEPT, TIMES_KEPT } from './times-kept.ts';
import { TOLD_TWICE } from './told-twice.ts';

/** What the classification knows of an unchanged record. */
export interface Sound {
  /** Not changed. */
  record: Json;
  results: Results;
  at: string;
  people: readonly Place[];
  stated: Stated;
  /** Every identifier, after the list that it stands in. */
  identifiers: ReadonlySet<string>;
  /** Identifiers to which something refers. */
  referred: ReadonlySet<string>;
  agreed: ReadonlyMap<Statement, number>;
  unauthorised: number;
  /** Whether an earlier pack, or the table of people, knows what stands at a place. */
  knows(place: Place, operator: Operator): boolean;
}

/** Bulletins that are not applicable, and apply by their range. */
function misapplied(record: Json, { applicability }: Results): number {
  return entries(record, 'bulletins', 'items').filter(
    ({ status }, index) => status === 'not-applicable' && applicability[index] === 'applies',
  ).length;
}

const AGREEMENTS = [...LIMITS_KEPT, ...TIMES_KEPT, ...TOLD_TWICE];
const STATEMENTS = [...EVIDENCE_KEPT, ...AGREEMENTS];

export function soundOf(
  record: Json,
  places: readonly Place[],
  { results, at, knows }: Pick<Sound, 'results' | 'at' | 'knows'>,
): Sound {
  const copy = structuredClone(record);
  const people = places.filter(({ means }) => means?.kind === 'person');
  const referring = places.filter(({ means }) => means?.kind === 'person' || means?.kind === 'reference');
  return {
    record: copy,
    results,
    at,
    knows,
    people,
    stated: statedIn(places),
    identifiers: new Set(
      places.filter(({ means }) => means?.kind === 'identifier').map((one) => `${listOf(one)} ${String(one.value)}`),
    ),
    referred: new Set(referring.map(({ value }) => String(value))),
    agreed: new Map(STATEMENTS.map((statement) => [statement, statement.broken(copy, at)])),
    unauthorised: unauthorised(copy, people, at),
  };
}

/**
 * Says what a change does to the release, without the rules of the release check: by the printed figures, by what the
 * record states twice, by the order of its times, and by a table over the fields.
 */
export function classify(change: Change, changed: Json, results: Results, sound: Sound): Verdict {
  const single = singly(change, sound);
  const limit = single ? undefined : limitJudged(change, sound);
  if (limit?.is === 'hurts') return limit;
  return (
    hurt(change, changed, results, sound, isOnlyStated(single, change)) ??
    contradicted(change, changed, results, sound) ??
    single ??
    limit ??
    tabled(change, sound)
  );
}

function hurt(change: Change, changed: Json, results: Results, sound: Sound, isOnly: boolean): Verdict | undefined {
  const says = (by: Ground, because: string): Verdict => ({ is: 'hurts', by, because });
  const isLimit = judgementFor(JUDGED_LIMITS, change.place, change, sound) !== undefined;
  const harm = harmIn(sound.results, results).find(
    (figure) =>
      !(isLimit && figure.includes('margin')) &&
      !(change.operator === 'renamed' && figure.endsWith('is gone')) &&
      !(isOfWeighing(change) && isWithinComparison(results)) &&
      !figure.startsWith('time before the latest departure') &&
      // The card of one state; whether a swing is owed is in the table.
      !(figure.startsWith('card') && figure.endsWith('is gone')),
  );
  if (harm !== undefined && !isOnly) return says('figure', harm);
  const broken = newlyBroken(EVIDENCE_KEPT, changed, sound);
  if (broken) return says('order', broken);
  if (unauthorised(changed, sound.people, sound.at) > sound.unauthorised)
    return says('person', 'Somebody acts who may not, or nobody of that name');
  if (failingIn(results).missing > failingIn(sound.results).missing)
    return says('result', 'A test that is owed is not recorded');
  return undefined;
}

/** Parts from which the empty mass and arm follow. */
const isOfWeighing = ({ place, also }: Change): boolean =>
  [place, also].some((one) => ['weighing', 'modifications', 'wiring', 'asFound'].includes(String(one?.path[0])));

/** What a new load draws, and how far the meters ran, is told once: no other figure depends on it. */
const isOnlyStated = (single: Verdict | undefined, { place }: Change): boolean =>
  single !== undefined && ['electrical', 'meters'].includes(String(place.path[0]));

/**
 * Whether weighing and prediction still agree, or nothing can be compared: then nothing in the record can tell a wrong
 * reading or mass from a right one. What it is compared with is stated once, or in the standing file.
 */
function isWithinComparison({ comparison, lateral }: Results): boolean {
  return [comparison, lateral?.comparison].every((one) => one?.isSignificant !== true || !isLarge(one));
}

function contradicted(change: Change, changed: Json, results: Results, sound: Sound): Verdict | undefined {
  const { place, operator, to } = change;
  const says = (by: Ground, because: string): Verdict => ({ is: 'contradicts', by, because });
  const isOther = to !== undefined && operator !== 'doubled' && operator !== 'reordered';
  if (operator !== 'doubled' && failingIn(results).failed > failingIn(sound.results).failed)
    return says('result', 'A result outside its limits');
  if (isOther && misapplied(changed, results) > misapplied(sound.record, sound.results))
    return says('result', 'The bulletin applies, or does not, against its status');
  const broken = operator === 'doubled' ? undefined : newlyBroken(AGREEMENTS, changed, sound);
  if (broken) return says('agreement', broken);
  if (isOther && isStatedElsewhere(sound.stated, place)) return says('name', 'Another field states the same name');
  if (isOther && isOfItsItem(sound.record, place)) return says('name', 'The inventory says otherwise of that item');
  const id = identifierAt(place);
  if (operator === 'doubled' && (id !== undefined || namesThing(place.value)))
    return says('name', 'Two entries of one thing');
  if (operator === 'renamed' && sound.identifiers.has(`${listOf(place)} ${String(to)}`))
    return says('name', 'Two entries of one name');
  if (id === undefined) return undefined;
  const isGone = operator === 'renamed' || (operator === 'left out' && place.isEntry);
  const isOnly = [...sound.identifiers].filter((one) => one.endsWith(` ${id}`)).length === 1;
  return isGone && isOnly && sound.referred.has(id) ? says('name', 'Something refers to it') : undefined;
}

/** Whether an entry is about one thing by its name: a wire of a mark, an item that is taken out. */
const namesThing = (value: Json): boolean => isPart(value) && ('mark' in value || 'item' in value);

const listOf = ({ path }: Place): string => path.slice(0, -2).join('/');

function identifierAt({ means, value }: Place): string | undefined {
  if (means?.kind === 'identifier') return String(value);
  const id = isPart(value) ? value.id : undefined;
  return typeof id === 'string' ? id : undefined;
}

function newlyBroken(statements: readonly Statement[], changed: Json, { agreed, at }: Sound): string | undefined {
  return statements.find((statement) => statement.broken(changed, at) > (agreed.get(statement) ?? 0))?.says;
}

/** The judgement of a limit or a term: which side the change lies on. */
function limitJudged(change: Change, sound: Sound): Verdict | undefined {
  const { place, to, also } = change;
  const judgements = [place, ...(also ? [also] : [])].flatMap(
    (one) => judgementFor(JUDGED_LIMITS, one, change, sound) ?? [],
  );
  const says = (is: Class, because: string): Verdict => ({ is, by: 'limit', because });
  if (to === undefined) {
    const gone = judgements.find(({ is }) => is !== 'free');
    return gone && says('hurts', gone.is === 'hurts' ? gone.because : `No limit or term is left: ${gone.because}`);
  }
  const [found] = judgements;
  if (!found) return undefined;
  if (found.is !== 'upper' && found.is !== 'lower') return says(found.is, found.because);
  const isUp = rankOf(place, to) > rankOf(place, place.value);
  return isUp === (found.is === 'upper') ? says('hurts', found.because) : says('free', 'The safe side of a limit');
}

/** Place of a value in its order: a number, a day, or a choice by the list of the schema. */
function rankOf({ choices }: Place, value: Json): number {
  if (typeof value === 'number') return value;
  return choices.length > 0 ? choices.indexOf(String(value)) : Date.parse(String(value));
}

/** What the table says, or what is usual for the kind of field; of two places the graver. */
function tabled(change: Change, sound: Sound): Verdict {
  const verdicts = [change.place, ...(change.also ? [change.also] : [])].map((one): Verdict => {
    const found = judgementFor(JUDGED_WORK, one, change, sound);
    const isClass = found && found.is !== 'upper' && found.is !== 'lower';
    return isClass ? { is: found.is as Class, by: 'table', because: found.because } : usually(one, change.operator);
  });
  const [gravest] = verdicts.sort((a, b) => CLASSES.indexOf(a.is) - CLASSES.indexOf(b.is));
  return gravest ?? usually(change.place, change.operator);
}

/** What stands at one place only: free if that is so of every place of the change. */
function singly(change: Change, sound: Sound): Verdict | undefined {
  const places = [change.place, ...(change.also ? [change.also] : [])];
  if (places.some((place) => sound.knows(place, change.operator))) return undefined;
  const singles = places.map((one) => {
    const found = judgementFor(JUDGED_SINGLE, one, change, sound);
    if (found) return { isSingle: true, isFree: true, because: found.because };
    const alone = { place: one, operator: change.operator } as Change;
    const { is } = limitJudged(alone, sound) ?? tabled(alone, sound);
    return { isSingle: false, isFree: is === 'free' || is === 'nothing', because: '' };
  });
  const first = singles.find(({ isSingle }) => isSingle);
  return first && singles.every(({ isFree }) => isFree)
    ? { is: 'free', by: 'table', because: first.because }
    : undefined;
}

function aroundOf({ record }: Sound, { path, value }: Place, to: Json | undefined): Around {
  const outer = valueAt(record, path.slice(0, -1));
  const load = path[1] === 'loads' ? valueAt(record, path.slice(0, 3)) : undefined;
  const around = isPart(value) ? value : isPart(outer) ? outer : {};
  return { record, around, loads: isPart(load) ? load : undefined, key: String(path.at(-1)), value, to };
}

function judgementFor(
  table: readonly Judgement[],
  place: Place,
  { operator, to }: Change,
  sound: Sound,
): Judgement | undefined {
  return table.find(
    ({ at, on, from, to: only, where }) =>
      (where === undefined ||
        (on.includes(operator) && covers(at, place.pattern) && where(aroundOf(sound, place, to)))) &&
      on.includes(operator) &&
      covers(at, place.pattern) &&
      (from === undefined || from.includes(place.value)) &&
      (only === undefined || only.includes(to)),
  );
}
