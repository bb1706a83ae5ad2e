import type { Weighing } from '../../record/visit.ts';
import { rectangular, resolution, standardErrorOfMean } from './uncertainty.ts';
import type { Adjustment, Contribution, ReducedPoint } from './weighing-result.ts';

/**
 * Returns every independent component of the uncertainty of a weighing.
 *
 * The error of a scale is common to all points weighed on it, so those points move together and their effects add
 * before squaring. The tare is read on the same display, so its step counts once more.
 *
 * @source JCGM 100:2008 (GUM), 5.1.2 and, of an error common to several points, 5.2.2, from memory
 */
export function weighingBudget(
  weighing: Weighing,
  points: readonly ReducedPoint[],
  adjustments: readonly Adjustment[],
): Contribution[] {
  return [
    ...weighing.scales.flatMap((scale) => scaleContribution(weighing, scale)),
    ...weighing.points.flatMap((point, index) => pointContributions(weighing, point, points[index])),
    ...adjustments.filter(({ massLimitKg }) => massLimitKg > 0).map(adjustmentContribution),
  ];
}

function scaleContribution(weighing: Weighing, scale: Weighing['scales'][number]): Contribution[] {
  const over = weighing.points.filter((point) => point.scale === scale.id);
  if (over.length === 0) return [];
  return [
    {
      component: { kind: 'scale-error-limit', scale: scale.id },
      quantity: 'mass',
      standard: rectangular(scale.errorLimitKg),
      massSensitivity: over.length,
      momentSensitivity: over.reduce((sum, { armMm }) => sum + armMm, 0),
    },
  ];
}

function pointContributions(
  weighing: Weighing,
  point: Weighing['points'][number],
  reduced?: ReducedPoint,
): Contribution[] {
  const resolutionKg = weighing.scales.find(({ id }) => id === point.scale)?.resolutionKg ?? 0;
  const runs = point.readingsKg.length;
  const steps = Math.sqrt(1 / runs + (point.tareKg ? 1 : 0));
  const felt = { quantity: 'mass', massSensitivity: 1, momentSensitivity: point.armMm } as const;
  const contributions: Contribution[] = [
    { component: { kind: 'display-step', point: point.name }, ...felt, standard: resolution(resolutionKg) * steps },
    {
      component: { kind: 'arm-as-measured', point: point.name },
      quantity: 'arm',
      standard: rectangular(point.armLimitMm),
      massSensitivity: 0,
      momentSensitivity: reduced?.massKg ?? 0,
    },
  ];
  if (runs > 1)
    contributions.push({
      component: { kind: 'scatter', point: point.name, runs },
      ...felt,
      standard: standardErrorOfMean(point.readingsKg),
    });
  return contributions;
}

function adjustmentContribution({ line, massLimitKg, armMm }: Adjustment): Contribution {
  return {
    component: { kind: 'mass-as-stated', line },
    quantity: 'mass',
    standard: rectangular(massLimitKg),
    massSensitivity: 1,
    momentSensitivity: armMm,
  };
}
