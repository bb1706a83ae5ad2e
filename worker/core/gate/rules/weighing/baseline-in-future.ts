import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const baselineInFuture: Rule = {
  code: 'BASELINE_IN_FUTURE',
  severity: 'blocks',
  meaning: 'The baseline is dated after the aircraft arrived',
  remedy: m.baselineInFuture_remedy,
  source: PRACTICE,
  check: ({ visit, at }) => {
    const { baseline } = visit;
    const arrived = dateOf(visit.visit.arrivedAt);
    // Another pack may be released while this visit is open: the record then builds on that one.
    const isOfStandingFile = baseline?.reference === visit.standing?.pack;
    if (!baseline || baseline.date <= (isOfStandingFile ? dateOf(at) : arrived)) return undefined;
    return {
      path: ['baseline', 'date'],
      sentence: said(m.baselineInFuture_baselineDatedAfterArrival, {
        date: figure.date(baseline.date),
        arrived: figure.date(arrived),
      }),
      data: { date: baseline.date },
    };
  },
};
