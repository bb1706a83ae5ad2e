import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Spread that any set of scales can show. */
const MIN_LIMIT_KG = 1;

export const runsDisagree: Rule = {
  code: 'RUNS_DISAGREE',
  severity: 'caution',
  meaning: 'The runs of the weighing differ by more than scales and handling explain',
  remedy: m.runsDisagree_remedy,
  source: PRACTICE,
  check: ({ results, regime }) => {
    const totals = results.weighing?.runTotalsKg ?? [];
    if (totals.length < 2 || !results.weighing) return undefined;
    const spreadKg = Math.max(...totals) - Math.min(...totals);
    const limitKg = Math.max(MIN_LIMIT_KG, regime.runsDisagreeShare.value * results.weighing.asWeighed.massKg);
    if (isAtMost(spreadKg, limitKg)) return undefined;
    const [spreadText, limitText] = figure.apart('mass', spreadKg, limitKg);
    return {
      path: ['weighing', 'points'],
      sentence: said(m.runsDisagree_totalsRunsSpreadOver, {
        count: totals.length,
        spread: spreadText,
        limit: limitText,
      }),
      data: { spreadKg, limitKg },
    };
  },
};
