import type { Influence } from '../weighing/uncertainty.ts';
import { lateralMomentKgMm } from './lateral-moment.ts';

/** Place of a centre of gravity in plan, with its standard uncertainties. Aft and right are positive. */
export interface LateralCg {
  massKg: number;
  armMm: number;
  lateralMm: number;
  standardArmMm: number;
  standardLateralMm: number;
  /** Covariance of arm and lateral distance, in mm². */
  covarianceMm2: number;
}

/** A weighing point in plan. */
export interface PlanPoint {
  /** Net reading. */
  massKg: number;
  armMm: number;
  /** From the plane of symmetry, right positive. */
  lateralMm: number;
  /** Scale under it: two points on one scale share its error. */
  scale: string;
  /** Of the reading without the error of the scale: display and scatter. */
  standardKg?: number;
  standardArmMm?: number;
  standardLateralMm?: number;
}

/** An independent source of uncertainty, with the sensitivities of mass and of both moments. */
export type PlanInfluence = Influence & { lateralSensitivity: number };

/**
 * Returns the centre of gravity in plan by a weighing, with the covariance of its two places.
 *
 * X = Σ R·x / Σ R        Y = Σ R·y / Σ R
 *
 * @param scaleStandardsKg standard uncertainty of the error of each scale, common to its points
 * @returns undefined without a positive mass
 * @source derived from sums of moments; uncertainty: JCGM 100:2008 (GUM), 5.1.2 and 5.2.2, from memory;
 *   checked against Monte Carlo
 */
export function lateralCg(
  points: readonly PlanPoint[],
  scaleStandardsKg: Readonly<Record<string, number>> = {},
): LateralCg | undefined {
  const massKg = points.reduce((sum, point) => sum + point.massKg, 0);
  if (!(massKg > 0)) return undefined;
  const armMm = points.reduce((sum, point) => sum + point.massKg * point.armMm, 0) / massKg;
  const lateralMm = lateralMomentKgMm(points) / massKg;
  const influences = [...points.flatMap(pointInfluences), ...scaleInfluences(points, scaleStandardsKg)];
  return { massKg, armMm, lateralMm, ...combinePlan(influences, { massKg, armMm, lateralMm }) };
}

/**
 * Combines independent contributions for a centre of gravity in plan.
 *
 * s_X = (∂M_x/∂q − X·∂m/∂q) / m, s_Y in the same way        cov(X, Y) = Σ s_X·s_Y·u²
 *
 * @param at mass, more than zero, and centre of gravity
 * @returns standard uncertainties in mm, covariance in mm²
 * @source JCGM 100:2008 (GUM), 5.1.2 and F.1.2.3, from memory, with X = M_x/m and Y = M_y/m; checked against Monte Carlo
 */
export function combinePlan(
  influences: readonly PlanInfluence[],
  { massKg, armMm, lateralMm }: Pick<LateralCg, 'massKg' | 'armMm' | 'lateralMm'>,
): Pick<LateralCg, 'standardArmMm' | 'standardLateralMm' | 'covarianceMm2'> {
  let [armVariance, lateralVariance, covarianceMm2] = [0, 0, 0];
  for (const { standard, massSensitivity, momentSensitivity, lateralSensitivity } of influences) {
    const byArm = ((momentSensitivity - armMm * massSensitivity) / massKg) * standard;
    const byLateral = ((lateralSensitivity - lateralMm * massSensitivity) / massKg) * standard;
    armVariance += byArm ** 2;
    lateralVariance += byLateral ** 2;
    covarianceMm2 += byArm * byLateral;
  }
  return { standardArmMm: Math.sqrt(armVariance), standardLateralMm: Math.sqrt(lateralVariance), covarianceMm2 };
}

function pointInfluences(point: PlanPoint): PlanInfluence[] {
  const { massKg, armMm, lateralMm, standardKg = 0, standardArmMm = 0, standardLateralMm = 0 } = point;
  return [
    { standard: standardKg, massSensitivity: 1, momentSensitivity: armMm, lateralSensitivity: lateralMm },
    { standard: standardArmMm, massSensitivity: 0, momentSensitivity: massKg, lateralSensitivity: 0 },
    { standard: standardLateralMm, massSensitivity: 0, momentSensitivity: 0, lateralSensitivity: massKg },
  ];
}

function scaleInfluences(
  points: readonly PlanPoint[],
  scaleStandardsKg: Readonly<Record<string, number>>,
): PlanInfluence[] {
  return Object.entries(scaleStandardsKg).map(([scale, standard]) => {
    const over = points.filter((point) => point.scale === scale);
    return {
      standard,
      massSensitivity: over.length,
      momentSensitivity: over.reduce((sum, { armMm }) => sum + armMm, 0),
      lateralSensitivity: over.reduce((sum, { lateralMm }) => sum + lateralMm, 0),
    };
  });
}
