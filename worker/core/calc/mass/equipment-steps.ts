import type { AsFoundLine, Change, EquipmentItem, Visit } from '../../record/visit.ts';

/** A change of one item, or of one for another: a group exchanged is one removal or installation for each item. */
export type PlainChange = Exclude<Change, { kind: 'exchanged' }>;

interface PlacedChange {
  change: PlainChange;
  /** Items installed in the exchange in which this one leaves. */
  cameWith: readonly EquipmentItem[];
  path: (string | number)[];
}

interface Step {
  /** The item that the step names, as listed before; undefined if it was not on the list. */
  listed: EquipmentItem | undefined;
  path: (string | number)[];
}

/** A line of the survey applied to the list. */
export interface CorrectionStep extends Step {
  line: AsFoundLine;
  /** Line number that an unlisted item would get, if the list already had it. */
  taken: string | undefined;
}

/** One change of a modification, with the list after the corrections and earlier changes. */
export interface ChangeStep extends Step {
  modification: string;
  change: PlainChange;
  cameWith: readonly EquipmentItem[];
  /** Line number that an installed item would get, if the list already had it. */
  taken: string | undefined;
}

export interface EquipmentWalk {
  before: EquipmentItem[];
  corrections: CorrectionStep[];
  changes: ChangeStep[];
  after: EquipmentItem[];
}

/** The parts of a visit that change the equipment list. */
export type EquipmentParts = Pick<Visit, 'baseline' | 'asFound' | 'modifications'>;

type List = Map<string, EquipmentItem>;

/** Applies record corrections and then every modification, in their order, to the baseline equipment list. */
export function walkEquipment(visit: EquipmentParts): EquipmentWalk {
  const before = visit.baseline?.equipment ?? [];
  const list: List = new Map(before.map((item) => [item.id, item]));
  const corrections = (visit.asFound ?? []).map((line, index) => correct(list, line, ['asFound', index]));
  const changes = (visit.modifications ?? []).flatMap(({ id, changes: made }, index) =>
    made.flatMap((change, step) =>
      plainChanges(change, ['modifications', index, 'changes', step]).map((each) => apply(list, id, each)),
    ),
  );
  return { before, corrections, changes, after: [...list.values()] };
}

function correct(list: List, line: AsFoundLine, path: (string | number)[]): CorrectionStep {
  if (line.kind === 'unlisted') {
    const { kind: _kind, disposition: _disposition, by: _by, ...item } = line;
    const taken = list.has(item.id) ? item.id : undefined;
    list.set(item.id, item);
    return { line, listed: undefined, taken, path };
  }
  const listed = list.get(line.item);
  if (line.kind === 'missing') list.delete(line.item);
  if (listed && line.kind === 'different-serial') list.set(listed.id, { ...listed, serial: line.serial });
  if (listed && line.kind === 'different-mass')
    list.set(listed.id, {
      ...listed,
      massKg: line.massKg,
      armMm: line.armMm,
      lateralArmMm: line.lateralArmMm ?? listed.lateralArmMm,
    });
  return { line, listed, taken: undefined, path };
}

/** Returns the changes of single items in a change, each with its place in the record. */
export function plainChanges(change: Change, path: (string | number)[]): PlacedChange[] {
  if (change.kind !== 'exchanged') return [{ change, cameWith: [], path }];
  const { doneAt } = change;
  return [
    ...change.out.map(
      (item, index): PlacedChange => ({
        change: { kind: 'removed', ...item, doneAt },
        cameWith: change.in,
        path: [...path, 'out', index],
      }),
    ),
    ...change.in.map(
      (item, index): PlacedChange => ({
        change: { kind: 'installed', ...item, doneAt },
        cameWith: [],
        path: [...path, 'in', index],
      }),
    ),
  ];
}

function apply(list: List, modification: string, { change, cameWith, path }: PlacedChange): ChangeStep {
  const listed = change.kind === 'installed' ? undefined : list.get(change.item);
  if (change.kind === 'removed' || change.kind === 'replaced') list.delete(change.item);
  if (listed && change.kind === 'relocated') {
    list.set(listed.id, {
      ...listed,
      armMm: change.armMm,
      lateralArmMm: change.lateralArmMm ?? listed.lateralArmMm,
      location: change.location ?? listed.location,
    });
  }
  if (listed && change.kind === 'updated' && VERSIONED.has(change.what))
    list.set(listed.id, { ...listed, version: change.to });
  const incoming = incomingItem(change);
  const taken = incoming && list.has(incoming.id) ? incoming.id : undefined;
  if (incoming) list.set(incoming.id, incoming);
  return { modification, change, cameWith, listed, taken, path };
}

/** Updates after which the list names the new version. */
const VERSIONED: ReadonlySet<string> = new Set(['software', 'firmware', 'database']);

/** Returns the item that a change installs, as a line of the list. */
export function incomingItem(change: PlainChange): EquipmentItem | undefined {
  if (change.kind === 'replaced') return change.by;
  if (change.kind !== 'installed') return undefined;
  const { kind: _kind, part: _part, doneAt: _doneAt, ...item } = change;
  return item;
}
