import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { memory, type Rule } from '../../rule.ts';

export const enduranceShort: Rule = {
  code: 'ENDURANCE_SHORT',
  severity: 'caution',
  meaning: 'The battery does not last long enough after failure of the source',
  remedy: m.enduranceShort_remedy,
  source: memory('14 CFR 23.1353(h) before 2017; else the reserve of the record'),
  check: ({ results }) => {
    const endurance = results.electrical?.endurance;
    if (!endurance || endurance.minutes === undefined || isAtLeast(endurance.minutes, endurance.neededMin))
      return undefined;
    const { minutes, neededMin } = endurance;
    const [minutesText, neededText] = figure.plainApart(minutes, neededMin, 0);
    return {
      path: ['electrical', 'battery'],
      sentence: said(m.enduranceShort_batteryCarriesLoads, { minutes: minutesText, needed: neededText }),
      data: { minutes, neededMin },
    };
  },
};
