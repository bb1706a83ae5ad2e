import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const essentialLoadShed: Rule = {
  code: 'ESSENTIAL_LOAD_SHED',
  severity: 'blocks',
  meaning: 'A load that is needed to land hangs on a bus that goes dead when the source has failed',
  remedy: m.essentialLoadShed_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { buses = [], loads = [] } = visit.electrical ?? {};
    const dead = new Set(buses.filter(({ isAliveOnBattery }) => !isAliveOnBattery).map(({ id }) => id));
    return loads.flatMap(({ name, isEssential, bus, change }, index): Hit[] => {
      if (!isEssential || change === 'removed' || !dead.has(bus)) return [];
      return [
        {
          path: ['electrical', 'loads', index, 'bus'],
          sentence: said(m.essentialLoadShed_essentialBusDeadWhen, { name, bus }),
          data: { bus },
        },
      ];
    });
  },
};
