import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const receiveWithoutTransmit: Rule = {
  code: 'RECEIVE_WITHOUT_TRANSMIT',
  severity: 'caution',
  meaning: 'An input is joined to nothing that could drive it',
  remedy: m.receiveWithoutTransmit_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    (results.wiring?.nets ?? []).flatMap((net): Hit[] => {
      const first = net.pins.find(({ pin }) => pin.direction === 'in');
      const isDriven =
        net.pins.some(({ pin }) => ['out', 'both', 'power-out'].includes(pin.direction)) || net.reaches.size > 0;
      if (!first || isDriven) return [];
      return [
        {
          path: first.path,
          sentence: said(m.receiveWithoutTransmit_nothingDrivesInput, { first: first.key, signal: first.pin.signal }),
          data: { pin: first.key },
        },
      ];
    }),
};
