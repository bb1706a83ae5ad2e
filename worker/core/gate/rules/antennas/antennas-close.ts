import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const antennasClose: Rule = {
  code: 'ANTENNAS_CLOSE',
  severity: 'caution',
  meaning: 'Two antennas stand closer than their makers ask for',
  remedy: m.antennasClose_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const items = visit.antennas?.items ?? [];
    return (results.antennas?.spacings ?? []).flatMap(({ first, second, distanceMm, neededMm }): Hit[] => {
      if (neededMm === undefined || isAtLeast(distanceMm, neededMm)) return [];
      const [distanceText, neededText] = figure.apart('arm', distanceMm, neededMm);
      return [
        {
          path: ['antennas', 'items', second, 'position'],
          sentence: said(m.antennasClose_standApartTheirMakers, {
            items: items[first]?.name ?? '',
            items2: items[second]?.name ?? '',
            distance: distanceText,
            needed: neededText,
          }),
          data: { distanceMm, neededMm },
        },
      ];
    });
  },
};
