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
      if (neededMm === undefined || distanceMm >= neededMm) return [];
      return [
        {
          path: ['antennas', 'items', second, 'position'],
          sentence: say.words`${items[first]?.name ?? ''} and ${items[second]?.name ?? ''} stand ${say.measure('arm', distanceMm)} apart; their makers ask for ${say.measure('arm', neededMm)}`,
          data: { distanceMm, neededMm },
        },
      ];
    });
  },
};
