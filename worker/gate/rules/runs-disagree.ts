import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

/** Below this a spread is within what any set of scales shows. */
const LEAST_LIMIT_KG = 1;

export const runsDisagree: Rule = {
  code: 'RUNS_DISAGREE',
  severity: 'caution',
  meaning: 'The runs of the weighing differ by more than scales and handling explain',
  remedy: phrase`Find the cause and weigh again`,
  source: PRACTICE,
  check: ({ results, regime, say }) => {
    const totals = results.weighing?.runTotalsKg ?? [];
    if (totals.length < 2 || !results.weighing) return [];
    const spreadKg = Math.max(...totals) - Math.min(...totals);
    const limitKg = Math.max(LEAST_LIMIT_KG, regime.runsDisagreeShare.value * results.weighing.asWeighed.massKg);
    if (isAtMost(spreadKg, limitKg)) return [];
    const [spreadText, limitText] = say.apart('mass', spreadKg, limitKg);
    return [
      {
        path: ['weighing', 'points'],
        sentence: say.words`The totals of ${totals.length} runs spread over ${spreadText}; the limit is ${limitText}`,
        data: { spreadKg, limitKg },
      },
    ];
  },
};
