import { pointer } from '../../record/pointer.ts';
import type { Scale, Visit, Weighing, WeighingPoint } from '../../record/visit.ts';
import { cgMm, hasMass, type MassMoment, total } from '../mass/mass-moment.ts';
import type { PlacedMass } from '../mass/mass-result.ts';
import { interpolate } from '../numbers/interpolate.ts';
import { COVERAGE_FACTOR, combine, meanOf } from './uncertainty.ts';
import { weighingAdjustments } from './weighing-adjustments.ts';
import { weighingBudget } from './weighing-budget.ts';
import type { ReducedPoint, RepeatedResult, WeighingResult } from './weighing-result.ts';

export type { ReducedPoint, ReducedRun, WeighingResult } from './weighing-result.ts';

/**
 * Reduces a weighing to the empty mass and centre of gravity with their uncertainty.
 *
 * @returns undefined if tare and items leave no mass, or a point has no reading
 * @source method: FAA-H-8083-1B ch. 3; uncertainty: JCGM 100:2008
 */
export function reduceWeighing({ aircraft }: Pick<Visit, 'aircraft'>, weighing: Weighing): WeighingResult | undefined {
  const points = weighing.points.map((point) => reducePoint(point, scaleOf(weighing, point)));
  const adjustments = weighingAdjustments(aircraft, weighing, pointer('weighing'));
  const asWeighed = total(points);
  const empty = total([asWeighed, ...adjustments]);
  if (!hasMass(asWeighed) || !hasMass(empty)) return undefined;
  const armMm = cgMm(empty);
  const budget = weighingBudget(aircraft, weighing, points, adjustments);
  const standard = combine(budget, empty.massKg, armMm);
  return {
    points,
    asWeighed,
    adjustments,
    empty: { ...empty, armMm },
    runTotalsKg: runTotals(points),
    budget,
    standard,
    expanded: { massKg: COVERAGE_FACTOR * standard.massKg, armMm: COVERAGE_FACTOR * standard.armMm },
    repeated: repeatedWeighing({ ...empty, armMm }, weighing, adjustments),
  };
}

/** Returns the scale under a point; undefined if the record has no such scale, which the release check reports. */
export function scaleOf(weighing: Weighing, point: WeighingPoint): Scale | undefined {
  return weighing.scales.find(({ id }) => id === point.scale);
}

/**
 * Returns the correction of a reading from the calibration certificate, linear between its lines.
 *
 * @returns kg, to be added to the reading
 * @source common practice, no source; the corrections are the certificate’s, linear between its lines
 */
export function scaleCorrectionKg(scale: Scale | undefined, readingKg: number): number {
  return interpolate(
    scale?.corrections ?? [],
    readingKg,
    (row) => row.readingKg,
    (row) => row.addKg,
  );
}

/** Reduces the second weighing with the tare, the arms and the adjustments of the first. */
function repeatedWeighing(
  first: PlacedMass,
  weighing: Weighing,
  adjustments: readonly MassMoment[],
): RepeatedResult | undefined {
  const points = weighing.points.flatMap((point) => {
    const again = weighing.repeated?.readings.find((reading) => reading.point === point.id);
    return again ? [reducePoint({ ...point, readingsKg: [again.readingKg] }, scaleOf(weighing, point))] : [];
  });
  const empty = total([...points, ...adjustments]);
  if (points.length < weighing.points.length || !hasMass(empty)) return undefined;
  const armMm = cgMm(empty);
  return {
    massKg: empty.massKg,
    armMm,
    differenceKg: empty.massKg - first.massKg,
    differenceMm: armMm - first.armMm,
  };
}

function reducePoint(point: WeighingPoint, scale: Scale | undefined): ReducedPoint {
  const tareKg = point.tareKg ?? 0;
  const runs = point.readingsKg.map((grossKg) => {
    const correctionKg = scaleCorrectionKg(scale, grossKg);
    return { grossKg, correctionKg, netKg: grossKg + correctionKg - tareKg };
  });
  const nets = runs.map(({ netKg }) => netKg);
  const massKg = meanOf(nets);
  return {
    id: point.id,
    name: point.name,
    side: point.side,
    armMm: point.armMm,
    tareKg,
    runs,
    massKg,
    momentKgMm: massKg * point.armMm,
    spreadKg: Math.max(...nets) - Math.min(...nets),
  };
}

function runTotals(points: readonly ReducedPoint[]): number[] {
  const runs = points[0]?.runs.length ?? 0;
  if (points.some((point) => point.runs.length !== runs)) return [];
  return Array.from({ length: runs }, (_, run) =>
    points.reduce((sum, point) => sum + (point.runs[run]?.netKg ?? 0), 0),
  );
}
