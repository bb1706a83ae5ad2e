import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const tractionInsulationLow: Rule = {
  code: 'TRACTION_INSULATION_LOW',
  severity: 'blocks',
  meaning: 'The insulation of the traction circuit is below its limit',
  remedy: m.tractionInsulationLow_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const insulation = visit.electrical?.traction?.insulation;
    if (!insulation || isAtLeast(insulation.resistanceMohm, insulation.limitMohm)) return undefined;
    const { resistanceMohm, limitMohm } = insulation;
    const [value, limit] = figure.plainApart(resistanceMohm, limitMohm, 1);
    return {
      path: ['electrical', 'traction', 'insulation', 'resistanceMohm'],
      sentence: said(m.tractionInsulationLow_insulationLimit, { value, limit }),
      data: { resistanceMohm, limitMohm },
    };
  },
};
