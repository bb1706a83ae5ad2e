import { areLaminar } from '../../calc/loading/boundary.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const loadingLimitsCross: Rule = {
  code: 'LOADING_LIMITS_CROSS',
  severity: 'blocks',
  meaning: 'Two loading limits share some stations but neither holds the other',
  remedy: phrase`Word the limits so that groups are nested or apart`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const limits = visit.aircraft.loadingLimits ?? [];
    if (areLaminar(limits.map(({ stations }) => new Set(stations)))) return [];
    return [
      {
        path: ['aircraft', 'loadingLimits'],
        sentence: say.words`Two loading limits share some stations, but neither holds all of the other`,
      },
    ];
  },
};
