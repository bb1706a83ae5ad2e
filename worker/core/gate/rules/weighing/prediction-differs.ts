import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import { COVERAGE_FACTOR } from '../../../calc/weighing/uncertainty.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const predictionDiffers: Rule = {
  code: 'PREDICTION_DIFFERS',
  severity: 'caution',
  meaning: 'Weighed and calculated empty mass differ by more than their uncertainties explain',
  remedy: m.predictionDiffers_remedy,
  source: PRACTICE,
  check: ({ results, regime }) => {
    const { comparison } = results;
    if (!comparison) return undefined;
    const massLimitKg = Math.max(regime.predictionToleranceKg.value, COVERAGE_FACTOR * comparison.standard.massKg);
    const armLimitMm = Math.max(regime.predictionToleranceMm.value, COVERAGE_FACTOR * comparison.standard.armMm);
    const { differenceKg, differenceMm } = comparison;
    if (isAtMost(Math.abs(differenceKg), massLimitKg) && isAtMost(Math.abs(differenceMm), armLimitMm)) return undefined;
    const [massText, massLimitText] = figure.apart('mass', differenceKg, massLimitKg, { signed: true });
    const [armText, armLimitText] = figure.apart('arm', differenceMm, armLimitMm, { signed: true });
    return {
      path: ['weighing'],
      sentence: said(m.predictionDiffers_weighedLessPredictedLimit, {
        mass: massText,
        massLimit: massLimitText,
        arm: armText,
        armLimit: armLimitText,
      }),
      data: { differenceKg, massLimitKg, differenceMm, armLimitMm },
    };
  },
};
