import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as m from '../../../text/generated/messages.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { runsSpread, spreadHit } from '../../runs-spread.ts';

export const runsContradict: Rule = {
  code: 'RUNS_CONTRADICT',
  severity: 'blocks',
  meaning: 'The runs of the weighing differ by more than 1 %: a reading is wrong',
  remedy: m.runsContradict_remedy,
  source: PRACTICE,
  values: ['runsDisagreeShare'],
  check: ({ results, regime }) => {
    const spread = runsSpread(results.weighing, regime);
    if (!spread || isAtMost(spread.spreadKg, spread.beliefKg)) return undefined;
    return spreadHit(spread, spread.beliefKg);
  },
};
