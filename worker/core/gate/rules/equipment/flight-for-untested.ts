import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const flightForUntested: Rule = {
  code: 'FLIGHT_FOR_UNTESTED',
  severity: 'caution',
  meaning: 'A flight was flown for a modification that states no flight test',
  remedy: m.flightForUntested_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, flightTest = 'none' }) => {
      const flight = flightTest === 'none' && visit.flights?.find((flown) => flown.for?.includes(id));
      return flight
        ? {
            field: 'flightTest',
            sentence: said(m.flightForUntested_flown, { id, flight: flight.id }),
            data: { flight: flight.id },
          }
        : undefined;
    }),
};
