import { lastRun } from '../../../calc/engine/engine-runs.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const leaksNotLookedFor: Rule = {
  code: 'LEAKS_NOT_LOOKED_FOR',
  severity: 'blocks',
  meaning: 'No leak check after the last engine run is recorded',
  remedy: m.leaksNotLookedFor_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const last = lastRun(visit.engineRuns ?? [], 'after');
    return last && last.run.leaksLookedFor !== true
      ? {
          path: ['engineRuns', last.index, 'leaksLookedFor'],
          sentence: said(m.leaksNotLookedFor_nobodyLookedLeaksAfter),
        }
      : undefined;
  },
};
