import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const essentialLoadShed: Rule = {
  code: 'ESSENTIAL_LOAD_SHED',
  severity: 'blocks',
  meaning: 'A load that is needed to land hangs on a bus that goes dead when the source has failed',
  remedy: phrase`Move it to a bus that stays alive, or show that it is not essential`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const { buses = [], loads = [] } = visit.electrical ?? {};
    const dead = new Set(buses.filter(({ isAliveOnBattery }) => !isAliveOnBattery).map(({ id }) => id));
    return loads.flatMap(({ name, isEssential, bus, change }, index): Hit[] => {
      if (!isEssential || change === 'removed' || !dead.has(bus)) return [];
      return [
        {
          path: ['electrical', 'loads', index, 'bus'],
          sentence: say.words`${name} is essential, and bus ${bus} is dead when the source has failed`,
          data: { bus },
        },
      ];
    });
  },
};
