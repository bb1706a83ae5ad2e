import type { Aircraft, Weighing } from '../../record/visit.ts';
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
  aircraft: Pick<Aircraft, 'levelAttitude'>,
  weighing: Weighing,
  points: readonly ReducedPoint[],
  adjustments: readonly Adjustment[],
): Contribution[] {
  return [
    ...weighing.scales.flatMap((scale) => scaleContribution(weighing, scale)),
    ...weighing.points.flatMap((point, index) => pointContributions(weighing, point, points[index])),
    ...adjustments.filter(({ massLimitKg }) => massLimitKg > 0).map(adjustmentContribution),
    ...levelling(aircraft, weighing, points),
    ...oilLevel(weighing),
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

function adjustmentContribution({ line, massLimitKg, errorArmMm }: Adjustment): Contribution {
  return {
    component: { kind: 'mass-as-stated', line },
    quantity: 'mass',
    standard: rectangular(massLimitKg),
    massSensitivity: 1,
    momentSensitivity: errorArmMm,
  };
}

const perDegree = Math.PI / 180;

/**
 * An attitude off by θ moves the centre of gravity by h·tan θ, where h is its height above the points. The attitude as
 * measured is not corrected for: it counts with the limit of error of the level as the half-width of a distribution.
 */
function levelling(
  { levelAttitude }: Pick<Aircraft, 'levelAttitude'>,
  { level, cgHeightMm }: Weighing,
  points: readonly ReducedPoint[],
): Contribution[] {
  if (!level || cgHeightMm === undefined) return [];
  const offDeg = Math.abs(level.longitudinalDeg - (levelAttitude?.longitudinalDeg ?? 0)) + (level.limitDeg ?? 0);
  if (offDeg === 0) return [];
  return [
    {
      component: { kind: 'levelling' },
      quantity: 'arm',
      standard: rectangular(Math.abs(cgHeightMm) * Math.tan(offDeg * perDegree)),
      massSensitivity: 0,
      momentSensitivity: points.reduce((sum, { massKg }) => sum + massKg, 0),
    },
  ];
}

function oilLevel({ oilMassLimitKg, oilArmMm }: Weighing): Contribution[] {
  if (oilMassLimitKg === undefined || oilArmMm === undefined || oilMassLimitKg === 0) return [];
  return [
    {
      component: { kind: 'oil-level' },
      quantity: 'mass',
      standard: rectangular(oilMassLimitKg),
      massSensitivity: 1,
      momentSensitivity: oilArmMm,
    },
  ];
}
