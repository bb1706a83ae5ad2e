import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const foundWireLive: Rule = {
  code: 'FOUND_WIRE_LIVE',
  severity: 'caution',
  meaning: 'A wire that was found to carry voltage is left in the aircraft with a cap on its end',
  remedy: m.foundWireLive_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.wiring?.found ?? []).flatMap(({ id, from, to, decision, isLive }, index): Hit[] =>
      decision === 'capped' && isLive
        ? [
            {
              path: ['wiring', 'found', index, 'isLive'],
              sentence: said(m.foundWireLive_wireCarriedVoltageWhen, { id, from, to }),
              data: { wire: id },
            },
          ]
        : [],
    ),
};
