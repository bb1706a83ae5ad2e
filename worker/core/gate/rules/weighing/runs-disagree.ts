import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as m from '../../../text/generated/messages.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { runsSpread, spreadHit } from '../../runs-spread.ts';

export const runsDisagree: Rule = {
  code: 'RUNS_DISAGREE',
  severity: 'caution',
  meaning: 'The runs of the weighing differ by more than scales and handling explain',
  remedy: m.runsDisagree_remedy,
  source: PRACTICE,
  values: ['runsDisagreeShare'],
  check: ({ results, regime }) => {
    const spread = runsSpread(results.weighing, regime);
    if (!spread || isAtMost(spread.spreadKg, spread.limitKg)) return undefined;
    // RUNS_CONTRADICT covers what is beyond belief.
    return isAtMost(spread.spreadKg, spread.beliefKg) ? spreadHit(spread, spread.limitKg) : undefined;
  },
};
