import type { Aircraft, Visit, Weighing } from '../../../record/visit.ts';
import { radians } from '../../../units/angle.ts';
import type { EquipmentChange } from '../../mass/equipment-change.ts';
import { cgMm, minus } from '../../mass/mass-moment.ts';
import { type Prediction, predictionInfluences } from '../../mass/prediction.ts';
import { COVERAGE_FACTOR, type Influence, rectangular } from '../uncertainty.ts';
import type { WeighingResult } from '../weighing-result.ts';
import { causeOf, type Mismatch, massCause } from './candidate.ts';
import type { Cause, MismatchCauses, MissingMass } from './causes-result.ts';
import { CHI_SQUARE_95, chiSquareOf, covarianceOf, type Fit, fitAlong, isRegular } from './covariance.ts';
import { fuelCauses, oilCauses } from './fluid-causes.ts';
import { itemCauses, itemFigureCauses, looseCauses } from './item-causes.ts';
import { pointArmCauses, readingCauses, tareCauses, zeroCauses } from './reading-causes.ts';

export type { Cause, MismatchCauses, MissingMass } from './causes-result.ts';

/** Taken if the record does not state the limits of the earlier figures, k = 2. */
const UNSTATED = { massKg: 1, armMm: 5 } as const;
/** Height of the centre of gravity above the points, and limit of the level, if the record does not state them. */
const UNSTATED_HEIGHT_MM = 800;
const UNSTATED_LEVEL_DEG = 0.1;
/** Weighed mass as a multiple of the predicted one, if pounds and kilograms were taken for each other. */
const POUNDS = [2.05, 2.36] as const;
const KILOGRAMS = [0.42, 0.49] as const;
/** Largest growth of an empty aircraft by paint, repairs and moisture. */
const GROWTH_SHARE = 0.03;
/** Largest error of a level and of a measured arm that a person makes without a slip of digits. */
const MOST_LEVEL_DEG = 5;
const MOST_ARM_MM = 100;

/**
 * Returns every single cause that explains the mismatch of weighing and prediction, in the order in which to check them.
 *
 * r = weighed − predicted; V = covariance of r; χ² = (r − h)·V⁻¹·(r − h). A cause h of known effect is admissible up to
 * 5.99, one of unknown size up to 3.84 (95 %). Without any cause h = 0.
 *
 * @returns undefined if mass or moment has no uncertainty
 * @source generalised regression, and the chi-square distribution, from memory; the list of causes is common practice
 */
export function mismatchCauses(
  visit: Visit,
  change: EquipmentChange,
  weighing: WeighingResult,
  prediction: Prediction,
): MismatchCauses | undefined {
  const residual = minus(weighing.empty, prediction);
  const covariance = covarianceOf([
    ...weighing.budget,
    ...predictionInfluences(visit, change),
    ...unstatedInfluences(visit, weighing, prediction),
  ]);
  if (!visit.weighing || !isRegular(covariance)) return undefined;
  const chiSquare = chiSquareOf(covariance, residual);
  const isNeeded = chiSquare > CHI_SQUARE_95.two;
  const mismatch = { residual, covariance };
  return {
    chiSquare,
    isNeeded,
    missing: isNeeded ? missingMass(mismatch, visit.aircraft) : undefined,
    causes: isNeeded ? admissible(mismatch, { visit, record: visit.weighing, change, weighing, prediction }) : [],
  };
}

interface Known {
  visit: Visit;
  record: Weighing;
  change: EquipmentChange;
  weighing: WeighingResult;
  prediction: Prediction;
}

function admissible(mismatch: Mismatch, known: Known): Cause[] {
  const { visit, record, change, weighing, prediction } = known;
  const ratio = weighing.empty.massKg / prediction.massKg;
  if (isWithin(ratio, POUNDS)) return [causeOf({ kind: 'pounds-for-kilograms' }, 0)];
  if (isWithin(ratio, KILOGRAMS)) return [causeOf({ kind: 'kilograms-for-pounds' }, 0)];
  const growth = massCause(mismatch, prediction.armMm, [0, GROWTH_SHARE * prediction.massKg], { kind: 'growth' });
  const causes = [
    ...tareCauses(mismatch, record),
    ...fuelCauses(mismatch, visit.aircraft, record),
    ...oilCauses(mismatch, visit, record),
    ...looseCauses(mismatch, visit.aircraft),
    ...itemCauses(mismatch, change),
    ...itemFigureCauses(mismatch, change, visit.aircraft),
    ...readingCauses(mismatch, record, visit.units),
    ...pointArmCauses(mismatch, weighing, visit.aircraft, visit.units),
    ...zeroCauses(mismatch, record),
    ...growth,
    ...levelCause(mismatch, known),
  ];
  return causes.length > 0 ? causes : armCauses(mismatch, known);
}

const isWithin = (value: number, [from, to]: readonly [number, number]): boolean => value >= from && value <= to;

/**
 * Returns the mismatch as a mass at an arm: x = ΔM / Δm, u²(x) = (V_MM − 2x·V_mM + x²·V_mm) / Δm².
 *
 * @source JCGM 100:2008 (GUM), 5.2.2, from memory
 */
function missingMass({ residual, covariance }: Mismatch, { airframe }: Aircraft): MissingMass | undefined {
  const { massKg } = residual;
  const limitKg = COVERAGE_FACTOR * Math.sqrt(covariance.mm);
  if (Math.abs(massKg) <= limitKg) return undefined;
  const armMm = cgMm(residual);
  const variance = covariance.MM - 2 * armMm * covariance.mM + armMm ** 2 * covariance.mm;
  const limitMm = (COVERAGE_FACTOR * Math.sqrt(variance)) / Math.abs(massKg);
  return 2 * limitMm <= (airframe.aftMm - airframe.forwardMm) / 4 ? { massKg, limitKg, armMm, limitMm } : undefined;
}

const alongMoment = ({ covariance, residual }: Mismatch): Fit =>
  fitAlong(covariance, residual, { massKg: 0, momentKgMm: 1 });

/** Returns a level that is a little off, if only the moments differ. */
function levelCause(mismatch: Mismatch, { record, weighing }: Known): Cause[] {
  const { size, chiSquare } = alongMoment(mismatch);
  const heightMm = record.cgHeightMm ?? UNSTATED_HEIGHT_MM;
  const angleDeg = Math.atan(size / (weighing.asWeighed.massKg * heightMm)) / radians(1);
  const isPossible = chiSquare <= CHI_SQUARE_95.one && Math.abs(angleDeg) <= MOST_LEVEL_DEG;
  return isPossible ? [causeOf({ kind: 'level', angleDeg }, chiSquare)] : [];
}

/** Returns the arm of each point that would explain a difference of the moments only. */
function armCauses(mismatch: Mismatch, { weighing }: Known): Cause[] {
  const { size, chiSquare } = alongMoment(mismatch);
  if (chiSquare > CHI_SQUARE_95.one) return [];
  return weighing.points.flatMap(({ name, armMm, massKg }) => {
    const offMm = size / massKg;
    if (!(Math.abs(offMm) <= MOST_ARM_MM)) return [];
    const recorded = { quantity: 'arm', value: armMm, instead: armMm - offMm } as const;
    return [causeOf({ kind: 'point-arm', of: name, recorded }, chiSquare)];
  });
}

/** Returns what the record does not state, so that nobody is accused of a difference that levelling or old figures explain. */
function unstatedInfluences(visit: Visit, weighing: WeighingResult, prediction: Prediction): Influence[] {
  const { baseline, weighing: record } = visit;
  const before = prediction.baseline;
  const level = record?.level;
  const off = level
    ? Math.abs(level.longitudinalDeg - (visit.aircraft.levelAttitude?.longitudinalDeg ?? 0)) +
      (level.limitDeg ?? UNSTATED_LEVEL_DEG)
    : UNSTATED_LEVEL_DEG;
  return [
    ...(baseline?.emptyMassLimitKg === undefined
      ? [{ standard: UNSTATED.massKg / COVERAGE_FACTOR, massSensitivity: 1, momentSensitivity: before.armMm }]
      : []),
    ...(baseline?.emptyArmLimitMm === undefined
      ? [{ standard: UNSTATED.armMm / COVERAGE_FACTOR, massSensitivity: 0, momentSensitivity: before.massKg }]
      : []),
    ...(record?.cgHeightMm === undefined
      ? [
          {
            standard: rectangular(UNSTATED_HEIGHT_MM * Math.tan(radians(off))),
            massSensitivity: 0,
            momentSensitivity: weighing.asWeighed.massKg,
          },
        ]
      : []),
  ];
}
