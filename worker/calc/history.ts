import { dateOf } from '../units/calendar.ts';
import type { Visit } from '../visit/visit.ts';
import { baselineEmpty } from './baseline.ts';
import type { ChangeLine, EquipmentChange } from './equipment-change.ts';
import { cgMm, hasMass, type MassMoment, minus, total } from './mass-moment.ts';
import type { WeighingResult } from './weighing.ts';

/** What history says of a weighing, and of corrections to the papers. */
export const WEIGHED = 'Weighed';
export const RECORD_CORRECTED = 'Record corrected as found';

/** A step of the running empty-mass history: what changed, and what held after it. */
export interface HistoryEntry extends MassMoment {
  date: string;
  reason: string;
  armMm: number;
  changeKg: number;
  changeKgMm: number;
}

/**
 * The history in the papers, then this visit's corrections, modifications and weighing.
 *
 * @source common practice, no source
 */
export function emptyMassHistory(visit: Visit, change: EquipmentChange, weighing?: WeighingResult): HistoryEntry[] {
  const entries: HistoryEntry[] = [];
  let at: MassMoment | undefined;
  const push = (date: string, reason: string, after: MassMoment): void => {
    const step = at ? minus(after, at) : { massKg: 0, momentKgMm: 0 };
    // A step on the way may leave no mass, which has no arm; the gate reports where that comes from.
    const armMm = hasMass(after) ? cgMm(after) : 0;
    entries.push({ date, reason, ...after, armMm, changeKg: step.massKg, changeKgMm: step.momentKgMm });
    at = after;
  };
  const { baseline } = visit;
  for (const { date, reason, massKg, momentKgMm } of baseline?.history ?? [])
    push(date, reason, { massKg, momentKgMm });
  const before = baselineEmpty(visit);
  if (before && baseline && !isSame(at, before)) push(baseline.date, baseline.reference, before);
  if (at) {
    for (const { date, reason, lines } of steps(visit, change)) push(date, reason, total([at, ...lines]));
  }
  if (weighing && visit.weighing) push(dateOf(visit.weighing.weighedAt), WEIGHED, weighing.empty);
  return entries;
}

/**
 * Mass by which the empty aircraft was changed since its last weighing: every step by what it added or took away in all, summed without
 * signs, so that a change that goes back is counted twice.
 *
 * @param weighedOn day of that weighing; without it every step is counted
 * @source common practice, no source
 */
export function changedSinceKg(history: readonly HistoryEntry[], weighedOn = ''): number {
  return history.filter(({ date }) => date > weighedOn).reduce((sum, { changeKg }) => sum + Math.abs(changeKg), 0);
}

function isSame(a: MassMoment | undefined, b: MassMoment): boolean {
  return a !== undefined && Math.abs(a.massKg - b.massKg) < 1e-6 && Math.abs(a.momentKgMm - b.momentKgMm) < 1e-3;
}

function steps(visit: Visit, { lines }: EquipmentChange): { date: string; reason: string; lines: ChangeLine[] }[] {
  const corrections = lines.filter(({ modification }) => modification === undefined);
  const arrived = dateOf(visit.visit.arrivedAt);
  return [
    ...(corrections.length > 0 ? [{ date: arrived, reason: RECORD_CORRECTED, lines: corrections }] : []),
    ...(visit.modifications ?? []).map(({ id, title, finishedAt }) => ({
      date: dateOf(finishedAt),
      reason: `${id} ${title}`,
      lines: lines.filter(({ modification }) => modification === id),
    })),
  ].filter((step) => step.lines.length > 0);
}
