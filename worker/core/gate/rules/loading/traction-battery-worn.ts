import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const tractionBatteryWorn: Rule = {
  code: 'TRACTION_BATTERY_WORN',
  severity: 'blocks',
  meaning: 'A traction battery has too little health left, or too many cycles',
  remedy: m.batteryWorn_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['aircraft', 'energyStores'], visit.aircraft.energyStores, (store) => {
      const { name, healthPercent, leastHealthPercent, cycles, maximumCycles } = store;
      if (
        healthPercent !== undefined &&
        leastHealthPercent !== undefined &&
        !isAtLeast(healthPercent, leastHealthPercent)
      ) {
        const [health, minimum] = figure.plainApart(healthPercent, leastHealthPercent, 1);
        return {
          field: 'healthPercent',
          sentence: said(m.batteryWorn_health, { name, health, minimum }),
          data: { healthPercent, leastHealthPercent },
        };
      }
      if (cycles === undefined || maximumCycles === undefined || cycles <= maximumCycles) return undefined;
      return {
        field: 'cycles',
        sentence: said(m.batteryWorn_cycles, { name, cycles, maximum: maximumCycles }),
        data: { cycles, maximumCycles },
      };
    }),
};
