import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const antennasClose: Rule = {
  code: 'ANTENNAS_CLOSE',
  severity: 'caution',
  meaning: 'Two antennas stand closer than their makers ask for',
  remedy: phrase`Move one, or show by test that neither disturbs the other`,
  source: PRACTICE,
  check: ({ visit, results, say }) => {
    const items = visit.antennas?.items ?? [];
    return (results.antennas?.spacings ?? []).flatMap(({ first, second, distanceMm, neededMm }): Hit[] => {
      if (neededMm === undefined || isAtLeast(distanceMm, neededMm)) return [];
      const [distanceText, neededText] = say.apart('arm', distanceMm, neededMm);
      return [
        {
          path: ['antennas', 'items', second, 'position'],
          sentence: say.words`${items[first]?.name ?? ''} and ${items[second]?.name ?? ''} stand ${distanceText} apart; their makers ask for ${neededText}`,
          data: { distanceMm, neededMm },
        },
      ];
    });
  },
};
