import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const flightIdentityDiffers: Rule = {
  code: 'FLIGHT_IDENTITY_DIFFERS',
  severity: 'blocks',
  meaning: 'The flight identity entered is neither the registration nor a call sign',
  remedy: m.flightIdentityDiffers_remedy,
  source: read('CS-ACNS (identity as in item 7 of the flight plan)'),
  check: ({ visit }) => {
    const marks = visit.aircraft.registration.replace('-', '');
    return hitsIn(['surveillance', 'devices'], visit.surveillance?.devices, ({ id, flightIdentitySet }) => {
      if (
        flightIdentitySet === undefined ||
        flightIdentitySet === marks ||
        /^[A-Z]{3}[0-9][0-9A-Z]{0,3}$/.test(flightIdentitySet)
      )
        return undefined;
      return {
        field: 'flightIdentitySet',
        sentence: said(m.flightIdentityDiffers_deviceFlightIdentityMarks, { id, flightIdentitySet, marks }),
        data: { device: id, flightIdentitySet },
      };
    });
  },
};
