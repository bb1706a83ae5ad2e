import { pointer } from '../visit/pointer.ts';
import type { AsFoundLine, Change, EquipmentItem, Visit } from '../visit/visit.ts';
import { type MassMoment, total } from './mass-moment.ts';
import { ofLimit } from './uncertainty.ts';

export type ChangeKind = 'removed' | 'installed' | 'relocated' | 'correction';

/** A signed line of the equipment change: removals are negative. */
export interface ChangeLine extends MassMoment {
  kind: ChangeKind;
  /** Modification it belongs to; undefined for a record correction. */
  modification: string | undefined;
  item: string;
  name: string;
  armMm: number;
  /** Standard uncertainty of the mass, zero where no limit is stated. */
  standardMassKg: number;
  /** The item is not on the list, so the line counts nothing. */
  unlisted: boolean;
  pointer: string;
}

export interface EquipmentChange extends MassMoment {
  lines: ChangeLine[];
  /** The list that held before, and the one that holds now. */
  before: EquipmentItem[];
  after: EquipmentItem[];
}

type List = Map<string, EquipmentItem>;
type Place = { modification: string | undefined; pointer: string };

/**
 * Applies record corrections and then every modification, in their order, to the baseline equipment list.
 *
 * Δm = Σ ± mᵢ        ΔM = Σ ± mᵢ·xᵢ        relocated: ΔM = m·(x₂ − x₁)        (FAA-H-8083-1B ch. 7)
 */
export function equipmentChange(visit: Visit): EquipmentChange {
  const before = visit.baseline?.equipment ?? [];
  const list: List = new Map(before.map((item) => [item.id, item]));
  const lines = [
    ...(visit.asFound ?? []).flatMap((line, index) => correction(list, line, pointer('asFound', index))),
    ...(visit.modifications ?? []).flatMap(({ id, changes }, index) =>
      changes.flatMap((change, step) =>
        apply(list, change, { modification: id, pointer: pointer('modifications', index, 'changes', step) }),
      ),
    ),
  ];
  return { lines, before, after: [...list.values()], ...total(lines) };
}

function correction(list: List, line: AsFoundLine, at: string): ChangeLine[] {
  const place = { modification: undefined, pointer: at };
  if (line.kind === 'unlisted') {
    const { kind: _kind, disposition: _disposition, by: _by, ...item } = line;
    list.set(item.id, item);
    return [{ ...put(item, place), kind: 'correction' }];
  }
  const listed = list.get(line.item);
  if (line.kind === 'missing') {
    list.delete(line.item);
    return [{ ...take(listed, line.item, undefined, place), kind: 'correction' }];
  }
  if (!listed) return [{ ...take(undefined, line.item, undefined, place), kind: 'correction' }];
  const found =
    line.kind === 'different-serial'
      ? { ...listed, serial: line.serial }
      : { ...listed, massKg: line.massKg, armMm: line.armMm };
  list.set(listed.id, found);
  if (line.kind === 'different-serial') return [];
  const change = {
    massKg: found.massKg - listed.massKg,
    momentKgMm: found.massKg * found.armMm - listed.massKg * listed.armMm,
  };
  return [{ ...put(found, place), ...change, kind: 'correction' }];
}

function apply(list: List, change: Change, place: Place): ChangeLine[] {
  switch (change.kind) {
    case 'installed': {
      const { kind: _kind, part: _part, ...item } = change;
      list.set(item.id, item);
      return [put(item, place)];
    }
    case 'removed': {
      const listed = list.get(change.item);
      list.delete(change.item);
      return [take(listed, change.item, change.massKg, place)];
    }
    case 'replaced': {
      const listed = list.get(change.item);
      list.delete(change.item);
      list.set(change.by.id, change.by);
      return [
        take(listed, change.item, change.massKg, place),
        put(change.by, { ...place, pointer: `${place.pointer}/by` }),
      ];
    }
    case 'relocated': {
      const listed = list.get(change.item);
      if (!listed) return [take(undefined, change.item, undefined, place)];
      const moved = { ...listed, armMm: change.armMm, location: change.location ?? listed.location };
      list.set(listed.id, moved);
      const momentKgMm = listed.massKg * (change.armMm - listed.armMm);
      return [{ ...put(moved, place), kind: 'relocated', massKg: 0, momentKgMm, standardMassKg: 0 }];
    }
  }
}

function put(item: EquipmentItem, place: Place): ChangeLine {
  return {
    kind: 'installed',
    ...place,
    item: item.id,
    name: item.name,
    armMm: item.armMm,
    massKg: item.massKg,
    momentKgMm: item.massKg * item.armMm,
    standardMassKg: ofLimit(item.massLimitKg ?? 0),
    unlisted: false,
  };
}

/** The mass weighed on removal is preferred to the listed one; the arm is the one that the list had counted. */
function take(
  listed: EquipmentItem | undefined,
  item: string,
  weighedKg: number | undefined,
  place: Place,
): ChangeLine {
  const massKg = listed ? -(weighedKg ?? listed.massKg) : 0;
  const armMm = listed?.armMm ?? 0;
  return {
    kind: 'removed',
    ...place,
    item,
    name: listed?.name ?? 'Not on the list',
    armMm,
    massKg,
    momentKgMm: massKg * armMm,
    standardMassKg: ofLimit(listed?.massLimitKg ?? 0),
    unlisted: !listed,
  };
}
