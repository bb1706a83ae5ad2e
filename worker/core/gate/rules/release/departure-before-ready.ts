import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const departureBeforeReady: Rule = {
  code: 'DEPARTURE_BEFORE_READY',
  severity: 'caution',
  meaning: 'The remaining work ends after the latest take-off',
  remedy: m.departureBeforeReady_remedy,
  source: PRACTICE,
  check: ({ results }) => {
    const { slackMin, readyAt, plan } = results.clock;
    // If no work is left, a departure in the past is only late.
    if (slackMin === undefined || isAtLeast(slackMin, 0) || plan.totalMin === 0) return undefined;
    return {
      path: ['departure'],
      sentence: said(m.departureBeforeReady_workLeftEndsMinutes, {
        readyAt: figure.timestamp(readyAt),
        slackMin: figure.plainApart(-slackMin, 0, 0)[0],
      }),
      data: { slackMin },
    };
  },
};
