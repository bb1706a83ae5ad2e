import { isAtMost } from '../calc/numbers/limit-met.ts';
import type { Results } from '../calc/results.ts';
import type { MismatchCauses } from '../calc/weighing/causes/causes-result.ts';
import { COVERAGE_FACTOR } from '../calc/weighing/uncertainty.ts';
import type { Visit } from '../record/visit.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { list, type Said, said } from '../text/message.ts';
import { instantOf } from '../units/calendar.ts';
import { causeText, plusMinus } from './cause-text.ts';
import type { Regime } from './regimes/regime.ts';
import type { Hit } from './rule.ts';

/**
 * Beyond these shares of empty mass and mean chord, and beyond this multiple of the uncertainty, something is wrong.
 * Common practice, no source.
 */
const MASS_SHARE = 0.02;
const CHORD_SHARE = 0.01;
const SIGMAS = 3;
/** Used if no chord is recorded: most aeroplanes are about five chords long. */
const LENGTH_SHARE = 0.002;
/** Causes that a sentence names; more than so many explain anything, and none of them is named. */
const NAMED = 3;
const MANY = 10;

export interface Limits {
  massLimitKg: number;
  armLimitMm: number;
}

/** Returns the limits beyond which a difference needs a reason. */
export function toleranceOf({ standard }: NonNullable<Results['comparison']>, regime: Regime): Limits {
  return {
    massLimitKg: Math.max(regime.predictionToleranceKg.value, COVERAGE_FACTOR * standard.massKg),
    armLimitMm: Math.max(regime.predictionToleranceMm.value, COVERAGE_FACTOR * standard.armMm),
  };
}

/** Returns the limits beyond which no aircraft changes unnoticed. */
export function beliefOf(
  { aircraft }: Pick<Visit, 'aircraft'>,
  { prediction, comparison }: Pick<Results, 'prediction' | 'comparison'>,
  regime: Regime,
): Limits | undefined {
  if (!prediction || !comparison) return undefined;
  const { standard } = comparison;
  const { massLimitKg, armLimitMm } = toleranceOf(comparison, regime);
  const { airframe, mac } = aircraft;
  const armMm = mac ? CHORD_SHARE * mac.lengthMm : LENGTH_SHARE * (airframe.aftMm - airframe.forwardMm);
  return {
    massLimitKg: Math.max(massLimitKg, MASS_SHARE * prediction.massKg, SIGMAS * standard.massKg),
    armLimitMm: Math.max(armLimitMm, armMm, SIGMAS * standard.armMm),
  };
}

/** Whether a difference of weighing and prediction is within limits. */
export function isWithin(
  { differenceKg, differenceMm }: Pick<NonNullable<Results['comparison']>, 'differenceKg' | 'differenceMm'>,
  limits: Limits,
): boolean {
  return isAtMost(Math.abs(differenceKg), limits.massLimitKg) && isAtMost(Math.abs(differenceMm), limits.armLimitMm);
}

/** Whether the record explains a large difference: by its cause, or by a second weighing that agrees with the first. */
export function isAnswered({ weighing }: Pick<Visit, 'weighing'>, results: Results, regime: Regime): boolean {
  if (weighing?.differenceExplained) return true;
  const again = results.weighing?.repeated;
  if (!again || !weighing?.repeated || instantOf(weighing.repeated.at) <= instantOf(weighing.weighedAt)) return false;
  return isWithin(again, {
    massLimitKg: regime.predictionToleranceKg.value,
    armLimitMm: regime.predictionToleranceMm.value,
  });
}

/** Returns the hit for a difference: figures, limits, and the causes that explain it. */
export function differenceHit({ comparison, causes }: Results, limits: Limits): Hit | undefined {
  if (!comparison) return undefined;
  const { differenceKg, differenceMm } = comparison;
  const { massLimitKg, armLimitMm } = limits;
  const [mass, massLimit] = figure.apart('mass', differenceKg, massLimitKg, { signed: true });
  const [arm, armLimit] = figure.apart('arm', differenceMm, armLimitMm, { signed: true });
  const difference = said(m.predictionDiffers_weighedLessPredictedLimit, { mass, massLimit, arm, armLimit });
  return {
    path: ['weighing'],
    sentence: withCauses(withPlace(difference, causes), causes),
    data: {
      differenceKg,
      massLimitKg,
      differenceMm,
      armLimitMm,
      ...(causes?.missing && { missingArmMm: causes.missing.armMm, missingArmLimitMm: causes.missing.limitMm }),
      ...(causes?.isNeeded && { causes: causes.causes.map(({ kind }) => kind).join(' ') }),
    },
  };
}

function withPlace(difference: Said, causes: MismatchCauses | undefined): Said {
  const missing = causes?.missing;
  if (!missing) return difference;
  const { massKg, armMm, limitMm } = missing;
  return said(m.predictionDiffers_missing, {
    difference,
    mass: figure.measure('mass', massKg, { signed: true }),
    arm: plusMinus('arm', armMm, limitMm),
  });
}

function withCauses(difference: Said, causes: MismatchCauses | undefined): Said {
  if (!causes?.isNeeded) return difference;
  const named = causes.causes.slice(0, NAMED).map(causeText);
  if (named.length === 0) return said(m.predictionDiffers_noSingleCause, { difference });
  const count = causes.causes.length;
  if (count > MANY) return said(m.predictionDiffers_manyCauses, { difference, count });
  const further = count - named.length;
  const each = further > 0 ? [...named, said(m.predictionDiffers_further, { count: further })] : named;
  return said(m.predictionDiffers_causes, { difference, causes: list(each, said(m.predictionDiffers_or)) });
}
