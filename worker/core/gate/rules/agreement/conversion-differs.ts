import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const conversionDiffers: Rule = {
  code: 'CONVERSION_DIFFERS',
  severity: 'blocks',
  meaning: 'The modifications do not lead from the configuration of the baseline to that of the aircraft',
  remedy: m.conversionDiffers_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const [before, now] = [visit.baseline?.configuration, visit.aircraft.configuration?.id];
    const works = visit.modifications ?? [];
    const last = works.findLastIndex(({ convertsTo }) => convertsTo !== undefined);
    const to = works[last]?.convertsTo;
    if (now === undefined || before === undefined || (to ?? before) === now) return undefined;
    const values = { before, now };
    return to === undefined
      ? {
          path: ['aircraft', 'configuration', 'id'],
          sentence: said(m.conversionDiffers_unstated, values),
          data: values,
        }
      : {
          path: ['modifications', last, 'convertsTo'],
          sentence: said(m.conversionDiffers_other, { to, now }),
          data: { ...values, to },
        };
  },
};
