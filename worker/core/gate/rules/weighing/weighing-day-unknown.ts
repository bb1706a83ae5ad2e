import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const weighingDayUnknown: Rule = {
  code: 'WEIGHING_DAY_UNKNOWN',
  severity: 'caution',
  meaning: 'The record does not state when the aircraft was last weighed',
  remedy: m.weighingDayUnknown_remedy,
  source: PRACTICE,
  check: ({ visit: { baseline, weighing } }) =>
    baseline && !weighing && baseline.weighedOn === undefined
      ? {
          path: ['baseline', 'weighedOn'],
          sentence: said(m.weighingDayUnknown_unknown, {
            reference: baseline.reference,
            date: figure.date(baseline.date),
          }),
        }
      : undefined,
};
