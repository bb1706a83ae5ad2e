import type { Visit } from '../../record/visit.ts';
import { dateOf } from '../../units/calendar.ts';
import { compareCodeUnits } from '../../units/compare-code-units.ts';
import type { WeighingResult } from '../weighing/weighing-result.ts';
import { baselineEmpty } from './baseline.ts';
import type { ChangeLine, EquipmentChange } from './equipment-change.ts';
import { cgMm, hasMass, type MassMoment, minus, total } from './mass-moment.ts';
import type { HistoryCause, HistoryEntry } from './schedule-result.ts';

export type { HistoryEntry } from './schedule-result.ts';

/** Parts of a visit that make up its history. */
export type HistoryParts = Pick<Visit, 'baseline' | 'visit' | 'modifications' | 'weighing'>;

/**
 * Returns the history from the documents, then this visit's corrections, modifications and weighing.
 *
 * @source common practice, no source
 */
export function emptyMassHistory(
  visit: HistoryParts,
  change: EquipmentChange,
  weighing?: WeighingResult,
): HistoryEntry[] {
  const entries: HistoryEntry[] = [];
  let at: MassMoment | undefined;
  const push = (date: string, cause: HistoryCause, after: MassMoment): void => {
    const step = at ? minus(after, at) : { massKg: 0, momentKgMm: 0 };
    // An intermediate step may leave no mass, which has no arm; the release check reports the cause.
    const armMm = hasMass(after) ? cgMm(after) : 0;
    entries.push({ date, cause, ...after, armMm, changeKg: step.massKg, changeKgMm: step.momentKgMm });
    at = after;
  };
  const { baseline } = visit;
  for (const { date, reason, massKg, momentKgMm } of baseline?.history ?? [])
    push(date, { kind: 'stated', reason }, { massKg, momentKgMm });
  const before = baselineEmpty(visit);
  if (before && baseline && !isSame(at, before))
    push(baseline.date, { kind: 'baseline', reference: baseline.reference }, before);
  if (at) {
    for (const { date, cause, lines } of steps(visit, change)) push(date, cause, total([at, ...lines]));
  }
  if (weighing && visit.weighing) push(dateOf(visit.weighing.weighedAt), { kind: 'weighed' }, weighing.empty);
  return entries;
}

/**
 * Returns the net change of the empty condition since its last weighing, over this visit and all before.
 *
 * @param weighedOn date of that weighing; without it the history counts from its first line
 * @param isCounted whether a step counts, by default every step
 * @source common practice, no source
 */
export function changeSinceWeighing(
  history: readonly HistoryEntry[],
  weighedOn: string | undefined,
  isCounted: (entry: HistoryEntry) => boolean = () => true,
): MassMoment {
  const since = history.filter(({ date }, index) => index > 0 && (weighedOn === undefined || date > weighedOn));
  return total(
    since.filter(isCounted).map(({ changeKg, changeKgMm }) => ({ massKg: changeKg, momentKgMm: changeKgMm })),
  );
}

function isSame(a: MassMoment | undefined, b: MassMoment): boolean {
  return a !== undefined && Math.abs(a.massKg - b.massKg) < 1e-6 && Math.abs(a.momentKgMm - b.momentKgMm) < 1e-3;
}

interface Step {
  date: string;
  cause: HistoryCause;
  lines: ChangeLine[];
}

function steps(visit: HistoryParts, { lines }: EquipmentChange): Step[] {
  const corrections = lines.filter(({ modification }) => modification === undefined);
  const arrived = dateOf(visit.visit.arrivedAt);
  const corrected: Step = { date: arrived, cause: { kind: 'record-corrected' }, lines: corrections };
  const modified = (visit.modifications ?? []).map(
    ({ id, title, finishedAt }): Step => ({
      date: dateOf(finishedAt),
      cause: { kind: 'modification', modification: id, title },
      lines: lines.filter(({ modification, kind }) => modification === id && kind !== 'updated'),
    }),
  );
  // Every step of the visit in the order of its day: the record may list them in any.
  return [corrected, ...modified]
    .filter((step) => step.lines.length > 0)
    .sort((a, b) => compareCodeUnits(a.date, b.date));
}
