import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const workInACircle: Rule = {
  code: 'WORK_IN_A_CIRCLE',
  severity: 'blocks',
  meaning: 'Jobs of the worksheet wait for each other',
  remedy: m.workInACircle_remedy,
  source: PRACTICE,
  check: ({ results }) => {
    const { circle } = results.clock.plan;
    if (circle.length === 0) return undefined;
    return {
      path: ['worksheet'],
      sentence: said(m.workInACircle_jobsWaitEachOther, { circle: circle.join(', ') }),
      data: { jobs: circle.join(' ') },
    };
  },
};
