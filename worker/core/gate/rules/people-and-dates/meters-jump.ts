import { flownInVisit } from '../../../calc/flights/flights.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

/** One step of a meter that shows tenths, and the reading of it. */
const UNEXPLAINED_HOURS = 0.15;

export const metersJump: Rule = {
  code: 'METERS_JUMP',
  severity: 'caution',
  meaning: 'A meter or the landings rose by more than the recorded engine running and flights explain',
  remedy: m.metersJump_remedy,
  source: PRACTICE,
  check: ({ visit }): Hit[] => {
    const { readings, landings, landingsIn, groundRunMinutes = 0 } = visit.meters ?? {};
    const flown = flownInVisit(visit);
    const hours = (groundRunMinutes + flown.minutes) / 60;
    const hits = hitsIn(['meters', 'readings'], readings, ({ id, inHours, outHours }) => {
      const jump = outHours - inHours;
      if (isAtMost(jump, hours + UNEXPLAINED_HOURS)) return undefined;
      const [jumpText, explainedText] = figure.plainApart(jump, hours, 1);
      return {
        field: 'outHours',
        sentence: said(m.metersJump_meterRanHEngine, { id, jump: jumpText, explained: explainedText }),
        data: { jumpHours: jump, groundRunMinutes, flightMinutes: flown.minutes },
      };
    });
    const rise = landings === undefined || landingsIn === undefined ? 0 : landings - landingsIn;
    if (rise > flown.landings)
      hits.push({
        path: ['meters', 'landings'],
        sentence: said(m.metersJump_landingsRose, { rise, flown: flown.landings }),
        data: { rise, flown: flown.landings },
      });
    return hits;
  },
};
