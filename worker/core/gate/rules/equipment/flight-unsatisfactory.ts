import { isUnresolved } from '../../../calc/flights/flights.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const flightUnsatisfactory: Rule = {
  code: 'FLIGHT_UNSATISFACTORY',
  severity: 'blocks',
  meaning:
    'A flight was unsatisfactory, and neither a later flight nor a flight test after release covers the same work',
  remedy: m.flightUnsatisfactory_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['flights'], visit.flights, (flight) =>
      isUnresolved(flight, visit)
        ? {
            field: 'result',
            sentence: said(m.flightUnsatisfactory_noLaterFlight, { id: flight.id }),
            data: { flight: flight.id },
          }
        : undefined,
    ),
};
