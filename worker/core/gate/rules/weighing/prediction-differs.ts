import * as m from '../../../text/generated/messages.ts';
import { beliefOf, differenceHit, isAnswered, isWithin, toleranceOf } from '../../prediction-difference.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const predictionDiffers: Rule = {
  code: 'PREDICTION_DIFFERS',
  severity: 'caution',
  meaning: 'Weighed and calculated empty mass differ by more than their uncertainties explain',
  remedy: m.predictionDiffers_remedy,
  source: PRACTICE,
  values: ['predictionToleranceKg', 'predictionToleranceMm'],
  check: ({ visit, results, regime }) => {
    const { comparison } = results;
    if (!comparison) return undefined;
    const tolerance = toleranceOf(comparison, regime);
    if (isWithin(comparison, tolerance)) return undefined;
    const belief = beliefOf(visit, results, regime);
    // PREDICTION_UNBELIEVABLE covers what nobody explained.
    if (belief && !isWithin(comparison, belief) && !isAnswered(visit, results, regime)) return undefined;
    return differenceHit(results, tolerance);
  },
};
