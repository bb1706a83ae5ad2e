import { openAfter } from '../../../worker/core/calc/open-items/carry-over.ts';
import { NO_READINGS, readingsWith } from '../../../worker/core/calc/open-items/readings.ts';
import { compute } from '../../../worker/core/calc/results.ts';
import type { ArchiveFacts, RegisteredPerson } from '../../../worker/core/gate/rule.ts';
import { standingAfter } from '../../../worker/core/pack/standing-after.ts';
import { entryName } from '../../../worker/core/record/completed.ts';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { OUT } from './judgement.ts';
import { entries, figure, isPart, part, words } from './look.ts';
import type { Operator } from './operators.ts';
import { type Json, type JsonPart, type Place, valueAt } from './place.ts';

/** What a workshop knows of an aircraft that it released before: the file after that pack, what is open, its people. */
export interface Known {
  facts: ArchiveFacts;
  /** Whether it knows what stands at a place, so that a change there can be told. */
  knows(place: Pick<Place, 'path'>, operator: Operator): boolean;
}

const DAY_MS = 86_400_000;

/**
 * Makes what an earlier pack of the same aircraft would have left: what this visit did not add, with the due items as they
 * stood before they were done at this visit.
 */
export function knownBefore(record: Json): Known {
  const arrivedAt = words(part(record, 'visit'), 'arrivedAt') ?? '';
  const releasedAt = new Date(Date.parse(arrivedAt) - 200 * DAY_MS).toISOString();
  const earlier = earlierRecord(record, arrivedAt.slice(0, 10));
  const read = readRecord(earlier);
  if (!read.ok) throw new Error(`The earlier record does not fit the schema: ${JSON.stringify(read.issues)}`);
  const registration = words(part(record, 'aircraft'), 'registration') ?? '';
  const open = openAfter([], read.visit, { pack: `${registration}-P1`, at: releasedAt });
  const readings = readingsWith(NO_READINGS, read.visit, { pack: `${registration}-P1-1` });
  const results = compute(read.visit, { ...SETTINGS, at: releasedAt });
  const pack = { pack: `${registration}-P1-1`, sha256: '0'.repeat(64), date: releasedAt.slice(0, 10) };
  const file = standingAfter({ record: read.record, visit: read.visit, results }, pack, { open, readings });
  return {
    facts: { newerStanding: file, open, readings, people: entries(record, 'people').map(registered) },
    knows: ({ path }, operator) =>
      path[0] === 'people' ||
      path.includes('wasDueAt') ||
      // A reading that is left out keeps the last one.
      (path.join('/') === 'meters/landings' && !OUT.includes(operator)) ||
      (path.join('/') === 'baseline/emptyArm' && isPart(part(file.sections as Json, 'baseline'))) ||
      (!isRemoved(record, path) && isIn(file.sections as Json, record, path)),
  };
}

function registered(person: JsonPart): RegisteredPerson {
  const { id, name, capacity, authorisation, scope, validUntil } = person;
  return {
    id: String(id),
    name: String(name),
    capacity: String(capacity),
    licence: typeof authorisation === 'string' ? authorisation : null,
    scope: Array.isArray(scope) ? scope.map(String) : [],
    from: null,
    until: typeof validUntil === 'string' ? validUntil : null,
  };
}

/** What no figure of the standing file depends on. */
const SETTINGS = { leastPilotKg: 55, standardPersonKg: 86 };

const isNew = ({ change }: JsonPart): boolean => change === 'added';

/** The record that would leave this one its standing file. */
function earlierRecord(record: Json, arrivedOn: string): JsonPart {
  const copy = structuredClone(record) as JsonPart;
  for (const section of [
    'findings',
    'carried',
    'modifications',
    'flights',
    'asFound',
    'signOffs',
    'release',
    'weighing',
  ])
    delete copy[section];
  const fitted = new Set(
    entries(record, 'modifications')
      .flatMap((work) => entries(work, 'changes'))
      .map(({ id }) => id),
  );
  const isThere = (entry: JsonPart): boolean => !isNew(entry) && !fitted.has(entry.item ?? '');
  keep(copy, 'wiring', 'wires', isThere);
  keep(copy, 'electrical', 'loads', isThere);
  keep(copy, 'antennas', 'items', isThere);
  keep(copy, 'surveillance', 'devices', isThere);
  for (const list of ['transponderTest', 'encoder', 'altimeters', 'staticSystems', 'pitotSystems', 'radioChecks'])
    delete (copy.surveillance as JsonPart | undefined)?.[list];
  keep(copy, 'bulletins', 'items', (bulletin) => !((words(bulletin, 'doneOn') ?? '') >= arrivedOn));
  for (const life of entries(copy, 'lives', 'items')) undo(life, arrivedOn);
  for (const reading of entries(copy, 'meters', 'readings'))
    reading.outHours = reading.inHours ?? reading.outHours ?? 0;
  for (const counter of entries(copy, 'meters', 'counters')) counter.out = counter.in ?? counter.out ?? 0;
  const meters = copy.meters as JsonPart | undefined;
  if (meters?.landingsIn !== undefined) meters.landings = meters.landingsIn;
  return copy;
}

function keep(record: JsonPart, section: string, list: string, isKept: (entry: JsonPart) => boolean): void {
  const of = record[section];
  if (isPart(of) && of[list] !== undefined) of[list] = entries(of, list).filter(isKept);
}

/** Puts a due line that was done at this visit back to the time before. */
function undo(life: JsonPart, arrivedOn: string): void {
  const done = part(life, 'lastDone');
  const on = words(done, 'date');
  if (on === undefined || on < arrivedOn) return;
  const interval = part(life, 'interval');
  const months = figure(interval, 'months') ?? 12;
  done.date = new Date(Date.parse(arrivedOn) - Math.min(months, 12) * 30 * DAY_MS).toISOString().slice(0, 10);
  for (const clock of ['hours', 'landings', 'launches', 'cycles', 'starts']) {
    const count = figure(done, clock);
    const wasDue = figure(part(life, 'wasDueAt'), clock) ?? count;
    if (wasDue !== undefined) done[clock] = Math.max(0, wasDue - (figure(interval, clock) ?? 0));
  }
  delete life.wasDueAt;
}

/** Whether a path lies in an entry that the visit removes. */
function isRemoved(record: Json, path: Place['path']): boolean {
  const entry = valueAt(record, path.slice(0, 3));
  return isPart(entry) && entry.change === 'removed';
}

/** Whether the file states the same at a path of the record, by the names of its entries. */
function isIn(file: Json, record: Json, path: Place['path']): boolean {
  let [there, here]: (Json | undefined)[] = [file, record];
  for (const step of path) {
    const inside: Json | undefined = stepIn(here, step);
    const name = entryName(inside);
    there =
      Array.isArray(there) && name !== undefined
        ? there.find((entry) => entryName(entry) === name)
        : stepIn(there, step);
    here = inside;
    if (there === undefined) return false;
  }
  return true;
}

function stepIn(value: Json | undefined, step: string | number): Json | undefined {
  if (Array.isArray(value)) return value[Number(step)];
  return isPart(value) ? value[String(step)] : undefined;
}
