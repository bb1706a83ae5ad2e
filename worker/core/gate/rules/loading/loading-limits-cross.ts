import { areLaminar } from '../../../calc/loading/boundary.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const loadingLimitsCross: Rule = {
  code: 'LOADING_LIMITS_CROSS',
  severity: 'blocks',
  meaning: 'Two loading limits overlap: they share some stations, and neither includes the other',
  remedy: m.loadingLimitsCross_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const limits = visit.aircraft.loadingLimits ?? [];
    if (areLaminar(limits.map(({ stations }) => new Set(stations)))) return undefined;
    return {
      path: ['aircraft', 'loadingLimits'],
      sentence: said(m.loadingLimitsCross_twoLoadingLimitsShare),
    };
  },
};
