import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { isDeparturePast } from '../../departure-past.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const departureBeforeReady: Rule = {
  code: 'DEPARTURE_BEFORE_READY',
  severity: 'note',
  meaning: 'The remaining work ends after the latest take-off',
  remedy: m.departureBeforeReady_remedy,
  source: PRACTICE,
  check: ({ visit, results, at }) => {
    const { slackMin, readyAt, plan } = results.clock;
    const { departure } = visit;
    if (departure && isDeparturePast(visit, at))
      return {
        path: ['departure'],
        sentence: said(m.departureBeforeReady_passed, { planned: figure.timestamp(departure.plannedAt) }),
      };
    // If no work is left, nothing delays the departure.
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
