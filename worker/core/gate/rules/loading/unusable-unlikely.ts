import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Share of a tank that is usually unusable, if any is. */
const SHARE = { from: 0.005, to: 0.08 };

export const unusableUnlikely: Rule = {
  code: 'UNUSABLE_UNLIKELY',
  severity: 'caution',
  meaning: 'The unusable fuel of a tank is below 0.5 % or above 8 % of its capacity',
  remedy: m.unusableUnlikely_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['aircraft', 'stations'], visit.aircraft.stations, (station) => {
      if (!('unusableL' in station) || station.unusableL === 0) return undefined;
      const { id, name, unusableL, capacityL } = station;
      const share = unusableL / capacityL;
      if (share >= 1 || (isAtLeast(share, SHARE.from) && isAtMost(share, SHARE.to))) return undefined;
      return {
        field: 'unusable',
        sentence: said(m.unusableUnlikely_shareOfTank, {
          station: name,
          unusable: figure.measure('volume', unusableL),
          capacity: figure.measure('volume', capacityL),
          share: figure.plain(100 * share, 1),
        }),
        data: { station: id, unusableL, capacityL },
      };
    }),
};
