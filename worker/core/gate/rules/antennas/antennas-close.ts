import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const antennasClose: Rule = {
  code: 'ANTENNAS_CLOSE',
  severity: 'caution',
  meaning: 'Two antennas are closer together than their manufacturers require',
  remedy: m.antennasClose_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const items = visit.antennas?.items ?? [];
    return hits(results.antennas?.spacings, ({ first, second, distanceMm, neededMm }) => {
      if (neededMm === undefined || isAtLeast(distanceMm, neededMm)) return undefined;
      const [distanceText, neededText] = figure.apart('arm', distanceMm, neededMm);
      return {
        path: ['antennas', 'items', second, 'position'],
        sentence: said(m.antennasClose_standApartTheirMakers, {
          items: items[first]?.name ?? '',
          items2: items[second]?.name ?? '',
          distance: distanceText,
          needed: neededText,
        }),
        data: { distanceMm, neededMm },
      };
    });
  },
};
