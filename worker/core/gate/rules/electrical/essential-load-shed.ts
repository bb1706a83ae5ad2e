import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const essentialLoadShed: Rule = {
  code: 'ESSENTIAL_LOAD_SHED',
  severity: 'blocks',
  meaning: 'A load needed for landing is on a bus that has no power after failure of the source',
  remedy: m.essentialLoadShed_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { buses = [], loads = [] } = visit.electrical ?? {};
    const dead = new Set(buses.filter(({ isAliveOnBattery }) => !isAliveOnBattery).map(({ id }) => id));
    return hitsIn(['electrical', 'loads'], loads, ({ name, isEssential, bus, change }) => {
      if (!isEssential || change === 'removed' || !dead.has(bus)) return undefined;
      return {
        field: 'bus',
        sentence: said(m.essentialLoadShed_essentialBusDeadWhen, { name, bus }),
        data: { bus },
      };
    });
  },
};
