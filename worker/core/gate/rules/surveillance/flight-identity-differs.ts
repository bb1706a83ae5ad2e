import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const flightIdentityDiffers: Rule = {
  code: 'FLIGHT_IDENTITY_DIFFERS',
  severity: 'blocks',
  meaning: 'The flight identity entered is neither the marks nor a call sign of letters and figures',
  remedy: m.flightIdentityDiffers_remedy,
  source: read('CS-ACNS (identity as in item 7 of the flight plan)'),
  check: ({ visit }) => {
    const marks = visit.aircraft.registration.replace('-', '');
    return (visit.surveillance?.devices ?? []).flatMap(({ id, flightIdentitySet }, index): Hit[] => {
      if (
        flightIdentitySet === undefined ||
        flightIdentitySet === marks ||
        /^[A-Z]{3}[0-9][0-9A-Z]{0,3}$/.test(flightIdentitySet)
      )
        return [];
      return [
        {
          path: ['surveillance', 'devices', index, 'flightIdentitySet'],
          sentence: said(m.flightIdentityDiffers_deviceFlightIdentityMarks, { id, flightIdentitySet, marks }),
          data: { device: id, flightIdentitySet },
        },
      ];
    });
  },
};
