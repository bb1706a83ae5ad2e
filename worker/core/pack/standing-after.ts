import type { OpenItem } from '../calc/open-items/open-item.ts';
import type { Readings } from '../calc/open-items/readings.ts';
import type { Results } from '../calc/results.ts';
import { entryName } from '../record/completed.ts';
import { isObject } from '../record/is-object.ts';
import type { VisitRecord } from '../record/record.ts';
import type { StandingFile } from '../record/standing-file.ts';
import type { Visit } from '../record/visit.ts';
import { carriedForward } from './carry-forward.ts';

// A figure that was measured at this visit and belongs to the aircraft stays (a bond, a voltage drop). A test is an
// event of its visit and does not stay.

/** A sealed pack, and the visit in it. */
interface SealedVisit {
  /** In the present version. */
  record: VisitRecord;
  visit: Visit;
  results: Results;
}

type Items = ReadonlySet<string>;

/**
 * Returns what is valid of an aircraft after a pack. It follows from the sealed record and the items open after it,
 * and from nothing else.
 *
 * @param past open items and readings after the pack
 */
export function standingAfter(
  { record, visit, results }: SealedVisit,
  { pack, sha256, date }: { pack: string; sha256: string; date: string },
  { open, readings }: { open: readonly OpenItem[]; readings: Readings },
): StandingFile {
  const kept: Readonly<Record<string, unknown>> = record.standing?.kept ?? {};
  const baseline = carriedForward(visit, results, { pack, date }) ?? record.baseline;
  const aboard: Items = new Set(baseline?.equipment?.map(({ id }) => id));
  const { wiring, electrical, antennas, surveillance } = record;
  const sections = {
    units: record.units,
    workshop: record.workshop,
    aircraft: record.aircraft,
    certificates: record.certificates,
    baseline: baseline && { ...baseline, equipmentSumTolerance: record.baseline?.equipmentSumTolerance },
    wiring: wiring ? wiringAfter(wiring, aboard) : kept.wiring,
    electrical: electrical ? electricalAfter(electrical, aboard) : kept.electrical,
    antennas: antennas ? antennasAfter(antennas, aboard) : kept.antennas,
    surveillance: surveillance ? surveillanceAfter(surveillance, aboard) : kept.surveillance,
    lives: livesAfter(record.lives, kept.lives, open),
    bulletins: bulletinsAfter(record.bulletins, kept.bulletins, open),
    meters: metersAfter(record.meters, kept.meters),
  };
  return plain({ pack, sha256, sections, open, readings });
}

/** Unknown values are left out, as in a record. */
const plain = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value)) as Value;

const isAboard = (aboard: Items, { item }: { item?: string | undefined }): boolean =>
  item === undefined || aboard.has(item);

/** Returns an entry without the reference to an item that has left the aircraft. */
function ofAboard<Entry extends { item?: string | undefined }>(aboard: Items, entry: Entry): Entry {
  if (isAboard(aboard, entry)) return entry;
  const { item: _, ...rest } = entry;
  return rest as Entry;
}

function wiringAfter(wiring: NonNullable<VisitRecord['wiring']>, aboard: Items): unknown {
  const wires = wiring.wires
    .filter(({ change }) => change !== 'removed')
    .map(({ continuity: _, insulationMohm: __, ...wire }) => ({ ...wire, change: 'kept' }));
  const used = new Set(wires.flatMap(({ from, to }) => [from.at, to.at]));
  const { test: _, found, ...rest } = wiring;
  return {
    ...rest,
    connectors: wiring.connectors
      .filter((connector) => used.has(connector.id) || isAboard(aboard, connector))
      .map((connector) => ofAboard(aboard, connector)),
    wires,
    found: found?.filter(({ decision }) => decision !== 'removed'),
  };
}

function electricalAfter(electrical: NonNullable<VisitRecord['electrical']>, aboard: Items): unknown {
  return {
    ...electrical,
    sources: electrical.sources.map((source) => ofAboard(aboard, source)),
    battery: electrical.battery && ofAboard(aboard, electrical.battery),
    loads: electrical.loads
      .filter(({ change }) => change !== 'removed')
      .map((load) => ({ ...ofAboard(aboard, load), change: 'kept' })),
  };
}

function antennasAfter(antennas: NonNullable<VisitRecord['antennas']>, aboard: Items): unknown {
  const items = antennas.items
    .filter((antenna) => isAboard(aboard, antenna))
    .map((antenna) => ({ ...antenna, change: 'kept' }));
  return items.length === 0 ? undefined : { ...antennas, items };
}

function surveillanceAfter({ devices }: NonNullable<VisitRecord['surveillance']>, aboard: Items): unknown {
  const fitted = devices.filter((device) => isAboard(aboard, device)).map(({ readBack: _, ...device }) => device);
  return fitted.length === 0 ? undefined : { devices: fitted };
}

/** Returns the due items that are open after the visit, with the interval from which each counts. */
function livesAfter(lives: VisitRecord['lives'], kept: unknown, open: readonly OpenItem[]): unknown {
  const items = withKept(lives?.items, kept, 'items').filter((life) => isOpen(open, 'due', life));
  const hoursPerYear = lives?.hoursPerYear ?? (isObject(kept) ? kept.hoursPerYear : undefined);
  return items.length === 0 ? undefined : { hoursPerYear, items };
}

/** Returns the bulletins of the aircraft; one that comes due again only while it is open. Who assessed it stays with the pack. */
function bulletinsAfter(bulletins: VisitRecord['bulletins'], kept: unknown, open: readonly OpenItem[]): unknown {
  const items = withKept(bulletins?.items, kept, 'items').filter(
    (bulletin) => bulletin.status !== 'recurring' || isOpen(open, 'bulletin', bulletin),
  );
  return items.length === 0 ? undefined : { items: items.map(({ by: _, ...bulletin }) => bulletin) };
}

const isOpen = (open: readonly OpenItem[], kind: OpenItem['kind'], { id }: Entry): boolean =>
  open.some((item) => item.kind === kind && item.id === id);

/** Returns the meters and counters of the aircraft, without their readings. */
function metersAfter(meters: VisitRecord['meters'], kept: unknown): unknown {
  const readings = withKept(meters?.readings, kept, 'readings').map(({ inHours: _, outHours: __, ...meter }) => meter);
  const counters = withKept(meters?.counters, kept, 'counters').map(({ in: _, out: __, ...counter }) => counter);
  if (readings.length + counters.length === 0) return undefined;
  return { readings, ...(counters.length > 0 && { counters }) };
}

type Entry = Readonly<Record<string, unknown>>;

/** Returns the entries of a list with those kept from before, which come first. */
function withKept(stated: readonly Entry[] = [], kept: unknown, list: string): Entry[] {
  const before = isObject(kept) && Array.isArray(kept[list]) ? kept[list].filter(isObject) : [];
  const names = new Set(stated.map(entryName));
  return [...before.filter((entry) => !names.has(entryName(entry))), ...stated];
}
