import * as m from '../../../text/generated/messages.ts';
import { beliefOf, differenceHit, isAnswered, isWithin } from '../../prediction-difference.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const predictionUnbelievable: Rule = {
  code: 'PREDICTION_UNBELIEVABLE',
  severity: 'blocks',
  meaning:
    'Weighing and calculation differ by more than an aircraft changes unnoticed, without cause or second weighing',
  remedy: m.predictionUnbelievable_remedy,
  source: PRACTICE,
  values: ['predictionToleranceKg', 'predictionToleranceMm'],
  check: ({ visit, results, regime }) => {
    const belief = beliefOf(visit, results, regime);
    if (!results.comparison || !belief || isWithin(results.comparison, belief)) return undefined;
    return isAnswered(visit, results, regime) ? undefined : differenceHit(results, belief);
  },
};
