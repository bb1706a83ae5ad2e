import type { Visit } from '../../record/visit.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import { COVERAGE_FACTOR, combine, type Influence } from '../weighing/uncertainty.ts';
import type { WeighingResult } from '../weighing/weighing-result.ts';
import { baselineEmpty } from './baseline.ts';
import type { EquipmentChange } from './equipment-change.ts';
import { cgMm, hasMass, total } from './mass-moment.ts';
import type { Comparison, Prediction } from './prediction-result.ts';

export type { Comparison, Prediction } from './prediction-result.ts';

/**
 * Returns baseline plus record corrections plus modifications; undefined without a baseline, or if no mass is left.
 *
 * @source FAA-H-8083-1B ch. 7, read in a copy; uncertainty: JCGM 100:2008 (GUM), 5.1.2, read in NIST/SEMATECH 2.5.7
 */
export function predictEmpty(visit: Pick<Visit, 'baseline'>, change: EquipmentChange): Prediction | undefined {
  const before = baselineEmpty(visit);
  if (!before) return undefined;
  const after = total([before, change]);
  if (!hasMass(before) || !hasMass(after)) return undefined;
  const baselineMm = cgMm(before);
  const armMm = cgMm(after);
  return {
    ...after,
    armMm,
    baseline: { ...before, armMm: baselineMm },
    standard: combine(predictionInfluences(visit, change), after.massKg, armMm),
  };
}

/**
 * Returns the influences on a predicted empty mass: limits of the earlier figures, and of every changed item.
 *
 * @returns none without a baseline
 * @source JCGM 100:2008 (GUM), 5.1.2, read in NIST/SEMATECH 2.5.7
 */
export function predictionInfluences(visit: Pick<Visit, 'baseline'>, change: EquipmentChange): Influence[] {
  const before = baselineEmpty(visit);
  if (!before) return [];
  return [
    {
      standard: (visit.baseline?.emptyMassLimitKg ?? 0) / COVERAGE_FACTOR,
      massSensitivity: 1,
      momentSensitivity: cgMm(before),
    },
    {
      standard: (visit.baseline?.emptyArmLimitMm ?? 0) / COVERAGE_FACTOR,
      massSensitivity: 0,
      momentSensitivity: before.massKg,
    },
    ...change.lines.map(({ standardMassKg, armMm }) => ({
      standard: standardMassKg,
      massSensitivity: 1,
      momentSensitivity: armMm,
    })),
  ];
}

/**
 * Compares weighing and prediction: u²(d) = u²(weighed) + u²(predicted); significant if |d| > k·u(d).
 *
 * @source JCGM 100:2008 (GUM), 5.1.2, read in NIST/SEMATECH 2.5.7; the limit of k = 2 is our choice
 */
export function compareWeighing(weighing: WeighingResult, prediction: Prediction): Comparison {
  const differenceKg = weighing.empty.massKg - prediction.massKg;
  const differenceMm = weighing.empty.armMm - prediction.armMm;
  const standard = {
    massKg: Math.hypot(weighing.standard.massKg, prediction.standard.massKg),
    armMm: Math.hypot(weighing.standard.armMm, prediction.standard.armMm),
  };
  const ratio = (difference: number, u: number): number => (u > 0 ? Math.abs(difference) / u : 0);
  return {
    differenceKg,
    differenceMm,
    standard,
    massRatio: ratio(differenceKg, standard.massKg),
    armRatio: ratio(differenceMm, standard.armMm),
    isSignificant:
      !isAtMost(Math.abs(differenceKg), COVERAGE_FACTOR * standard.massKg) ||
      !isAtMost(Math.abs(differenceMm), COVERAGE_FACTOR * standard.armMm),
  };
}
