import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const directionIndicatorDrifts: Rule = {
  code: 'DIRECTION_INDICATOR_DRIFTS',
  severity: 'caution',
  meaning: 'The direction indicator drifts more than its manufacturer allows',
  remedy: m.directionIndicatorDrifts_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const indicator = visit.compass?.directionIndicator;
    if (!indicator?.limitDegPer15Min || isAtMost(Math.abs(indicator.driftDegPer15Min), indicator.limitDegPer15Min))
      return undefined;
    const { driftDegPer15Min, limitDegPer15Min } = indicator;
    const [drift, limit] = figure.plainApart(driftDegPer15Min, limitDegPer15Min, 1);
    return {
      path: ['compass', 'directionIndicator', 'driftDegPer15Min'],
      sentence: said(m.directionIndicatorDrifts_directionIndicatorDriftsQuarter, {
        driftDegPer15Min: drift,
        limitDegPer15Min: limit,
      }),
    };
  },
};
