import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const transmitMeetsTransmit: Rule = {
  code: 'TRANSMIT_MEETS_TRANSMIT',
  severity: 'blocks',
  meaning: 'Two outputs are connected',
  remedy: m.transmitMeetsTransmit_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.wiring?.nets, (net) => {
      const [first, second] = net.pins.filter(({ pin }) => pin.direction === 'out');
      if (!first || !second) return undefined;
      return {
        path: first.path,
        sentence: said(m.transmitMeetsTransmit_outputMeetsOutput, {
          first: first.key,
          signal: first.pin.signal,
          second: second.key,
          signal2: second.pin.signal,
        }),
        data: { pin: first.key },
      };
    }),
};
