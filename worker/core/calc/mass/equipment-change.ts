import { pointer } from '../../record/pointer.ts';
import type { EquipmentItem } from '../../record/visit.ts';
import { rectangular } from '../weighing/uncertainty.ts';
import type { ChangeLine, EquipmentChangeTotal } from './equipment-change-result.ts';
import {
  type ChangeStep,
  type CorrectionStep,
  type EquipmentParts,
  type EquipmentWalk,
  incomingItem,
  walkEquipment,
} from './equipment-steps.ts';
import { total } from './mass-moment.ts';

export type { ChangeKind, ChangeLine } from './equipment-change-result.ts';

/** Equipment change of the visit: its lines, their total, and every step with the list before it. */
export type EquipmentChange = EquipmentChangeTotal & EquipmentWalk;

type Place = Pick<ChangeLine, 'kind' | 'modification' | 'pointer'>;

/**
 * Returns record corrections and modifications as signed masses and moments.
 *
 * Δm = Σ ± mᵢ        ΔM = Σ ± mᵢ·xᵢ        relocated: ΔM = m·(x₂ − x₁)
 *
 * @source FAA-H-8083-1B ch. 7, read in a copy; the rules of sign also in FAA-H-8083-30, read
 */
export function equipmentChange(visit: EquipmentParts): EquipmentChange {
  const walk = walkEquipment(visit);
  const lines = [...walk.corrections.flatMap(correctionLines), ...walk.changes.flatMap(changeLines)];
  return { ...walk, lines, ...total(lines) };
}

function correctionLines({ line, listed, path }: CorrectionStep): ChangeLine[] {
  const place: Place = { kind: 'correction', modification: undefined, pointer: pointer(...path) };
  if (line.kind === 'unlisted') return [put(line, place)];
  if (!listed) return [unlistedLine(line.item, place)];
  if (line.kind === 'missing') return [take(listed, listed.massKg, place)];
  if (line.kind === 'different-serial') return [];
  const massKg = line.massKg - listed.massKg;
  const momentKgMm = line.massKg * line.armMm - listed.massKg * listed.armMm;
  return [{ ...put({ ...listed, armMm: line.armMm }, place), massKg, momentKgMm }];
}

function changeLines({ modification, change, listed, path }: ChangeStep): ChangeLine[] {
  const at = pointer(...path);
  const lines: ChangeLine[] = [];
  if (change.kind === 'relocated') {
    const place: Place = { kind: 'relocated', modification, pointer: at };
    if (!listed) return [unlistedLine(change.item, place)];
    const momentKgMm = listed.massKg * (change.armMm - listed.armMm);
    return [{ ...put({ ...listed, armMm: change.armMm }, place), massKg: 0, momentKgMm, standardMassKg: 0 }];
  }
  if (change.kind === 'updated') {
    const place: Place = { kind: 'updated', modification, pointer: at };
    if (!listed) return [unlistedLine(change.item, place)];
    const { what, from, to } = change;
    return [{ ...put(listed, place), massKg: 0, momentKgMm: 0, standardMassKg: 0, update: { what, from, to } }];
  }
  if (change.kind !== 'installed') {
    const place: Place = { kind: 'removed', modification, pointer: at };
    // The mass weighed on removal takes precedence over the listed one; the arm is the listed one.
    lines.push(listed ? take(listed, change.massKg ?? listed.massKg, place) : unlistedLine(change.item, place));
  }
  const incoming = incomingItem(change);
  const incomingAt = change.kind === 'replaced' ? `${at}/by` : at;
  if (incoming) lines.push(put(incoming, { kind: 'installed', modification, pointer: incomingAt }));
  return lines;
}

function put(item: EquipmentItem, place: Place): ChangeLine {
  const { id, name, armMm, massKg, massLimitKg = 0 } = item;
  return {
    ...place,
    item: id,
    name,
    armMm,
    massKg,
    momentKgMm: massKg * armMm,
    standardMassKg: rectangular(massLimitKg),
    update: undefined,
    unlisted: false,
  };
}

function take(listed: EquipmentItem, massKg: number, place: Place): ChangeLine {
  return { ...put(listed, place), massKg: -massKg, momentKgMm: -massKg * listed.armMm };
}

function unlistedLine(item: string, place: Place): ChangeLine {
  return {
    ...place,
    item,
    name: undefined,
    armMm: 0,
    massKg: 0,
    momentKgMm: 0,
    standardMassKg: 0,
    update: undefined,
    unlisted: true,
  };
}
