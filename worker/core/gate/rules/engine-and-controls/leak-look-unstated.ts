import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const leakLookUnstated: Rule = {
  code: 'LEAK_LOOK_UNSTATED',
  severity: 'caution',
  meaning: 'The engine run after the work does not state a check for leaks, which no work requires',
  remedy: m.leakLookUnstated_remedy,
  source: PRACTICE,
  check: ({ visit, requirements }) => {
    const isOwed = requirements.some(({ evidence }) => evidence === 'leak-check');
    return hitsIn(['engineRuns'], isOwed ? [] : visit.engineRuns, ({ when, leaksLookedFor }) =>
      when === 'after' && leaksLookedFor !== true
        ? { field: 'leaksLookedFor', sentence: said(m.leakLookUnstated_notStated) }
        : undefined,
    );
  },
};
