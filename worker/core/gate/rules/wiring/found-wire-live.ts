import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const foundWireLive: Rule = {
  code: 'FOUND_WIRE_LIVE',
  severity: 'caution',
  meaning: 'A found wire that carried voltage is left in the aircraft with its end capped',
  remedy: m.foundWireLive_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['wiring', 'found'], visit.wiring?.found, ({ id, from, to, decision, isLive }) =>
      decision === 'capped' && isLive
        ? {
            field: 'isLive',
            sentence: said(m.foundWireLive_wireCarriedVoltageWhen, { id, from, to }),
            data: { wire: id },
          }
        : undefined,
    ),
};
