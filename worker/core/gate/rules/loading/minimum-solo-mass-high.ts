import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const minimumSoloMassHigh: Rule = {
  code: 'MINIMUM_SOLO_MASS_HIGH',
  severity: 'caution',
  meaning: 'Only a heavy pilot may fly alone',
  remedy: m.minimumSoloMassHigh_remedy,
  source: PRACTICE,
  values: ['soloMassHighKg'],
  check: ({ results, regime }) => {
    const massKg = results.loading?.minimumSoloKg;
    if (massKg === undefined || isAtMost(massKg, regime.soloMassHighKg.value)) return undefined;
    return {
      path: ['aircraft', 'envelope'],
      sentence: said(m.minimumSoloMassHigh_leastPilotWhoMay, {
        mass: figure.measure('mass', massKg, figure.MIN),
      }),
      data: { leastKg: massKg },
    };
  },
};
