import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import { COVERAGE_FACTOR } from '../../../calc/weighing/uncertainty.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const lateralPredictionDiffers: Rule = {
  code: 'LATERAL_PREDICTION_DIFFERS',
  severity: 'caution',
  meaning: 'Weighed and calculated lateral centre of gravity differ by more than their uncertainties explain',
  remedy: m.lateralPredictionDiffers_remedy,
  source: PRACTICE,
  values: ['predictionToleranceMm'],
  check: ({ results, regime }) => {
    const comparison = results.lateral?.comparison;
    if (!comparison) return undefined;
    const { differenceMm, standard } = comparison;
    const limitMm = Math.max(regime.predictionToleranceMm.value, COVERAGE_FACTOR * standard.armMm);
    if (isAtMost(Math.abs(differenceMm), limitMm)) return undefined;
    const [difference, limit] = figure.apart('arm', differenceMm, limitMm, { signed: true });
    return {
      path: ['weighing', 'points'],
      sentence: said(m.lateralPredictionDiffers_weighedLessPredicted, { difference, limit }),
      data: { differenceMm, limitMm },
    };
  },
};
