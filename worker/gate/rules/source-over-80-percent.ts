import { printNumber } from '../../units/rounding.ts';
import { PHASE_NAMES } from '../phase-names.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const sourceOver80Percent: Rule = {
  code: 'SOURCE_OVER_80_PERCENT',
  severity: 'caution',
  meaning: 'The continuous load is over 80 % of what the sources give, and nothing shows the crew the load',
  remedy: 'Reduce the load, or fit a placard or an instrument by which it is kept down',
  source: read('AC 43.13-1B 11-35a: 80 % of the generator without placards or monitoring'),
  check: ({ visit, results }) => {
    const sources = visit.electrical?.sources ?? [];
    if (sources.every(({ isMonitored }) => isMonitored)) return [];
    return (results.electrical?.phases ?? []).flatMap(({ phase, continuousA, capacityA }): Hit[] => {
      if (capacityA === undefined || continuousA > capacityA || continuousA <= SHARE * capacityA) return [];
      return [
        {
          path: ['electrical', 'sources'],
          sentence: `${PHASE_NAMES[phase]}: continuous load ${printNumber(continuousA, 1)} A is over 80 % of ${printNumber(capacityA, 1)} A`,
          data: { phase, continuousA, capacityA },
        },
      ];
    });
  },
};

/** Share of the source that a load may reach unwatched; a hair above, for the sum is a rounded one. */
const SHARE = 0.8 * (1 + 1e-9);
