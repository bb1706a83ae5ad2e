import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const energyShort: Rule = {
  code: 'ENERGY_SHORT',
  severity: 'blocks',
  meaning: 'The traction batteries do not hold even the reserve',
  remedy: m.energyShort_remedy,
  source: PRACTICE,
  check: ({ results }) => {
    const { energy } = results;
    if (!energy?.endurance || energy.endurance.minutes > 0) return undefined;
    const [usable, reserve] = figure.plainApart(energy.usableKwh, energy.endurance.reserveKwh, 1);
    return {
      path: ['aircraft', 'energyUse'],
      sentence: said(m.energyShort_belowReserve, { usable, reserve }),
      data: { usableKwh: energy.usableKwh, reserveKwh: energy.endurance.reserveKwh },
    };
  },
};
