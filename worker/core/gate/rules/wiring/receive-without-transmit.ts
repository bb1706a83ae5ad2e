import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const receiveWithoutTransmit: Rule = {
  code: 'RECEIVE_WITHOUT_TRANSMIT',
  severity: 'caution',
  meaning: 'An input is connected to no output',
  remedy: m.receiveWithoutTransmit_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.wiring?.nets, (net) => {
      const first = net.pins.find(({ pin }) => pin.direction === 'in');
      const isDriven =
        net.pins.some(({ pin }) => ['out', 'both', 'power-out'].includes(pin.direction)) || net.reaches.size > 0;
      if (!first || isDriven) return undefined;
      return {
        path: first.path,
        sentence: said(m.receiveWithoutTransmit_nothingDrivesInput, { first: first.key, signal: first.pin.signal }),
        data: { pin: first.key },
      };
    }),
};
