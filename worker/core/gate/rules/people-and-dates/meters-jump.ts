import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** One step of a meter that shows tenths, and the reading of it. */
const UNEXPLAINED_HOURS = 0.15;

export const metersJump: Rule = {
  code: 'METERS_JUMP',
  severity: 'caution',
  meaning: 'A meter ran further than the recorded engine running on the ground explains',
  remedy: m.metersJump_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const minutes = visit.meters?.groundRunMinutes ?? 0;
    return hitsIn(['meters', 'readings'], visit.meters?.readings, ({ id, inHours, outHours }) => {
      const jump = outHours - inHours;
      if (isAtMost(jump, minutes / 60 + UNEXPLAINED_HOURS)) return undefined;
      const [jumpText, explainedText] = figure.plainApart(jump, minutes / 60, 1);
      return {
        field: 'outHours',
        sentence: said(m.metersJump_meterRanHEngine, { id, jump: jumpText, explained: explainedText }),
        data: { jumpHours: jump, groundRunMinutes: minutes },
      };
    });
  },
};
