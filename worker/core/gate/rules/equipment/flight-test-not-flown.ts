import { flightTestOf } from '../../../calc/flights/flights.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const flightTestNotFlown: Rule = {
  code: 'FLIGHT_TEST_NOT_FLOWN',
  severity: 'blocks',
  meaning: 'A flight test is marked as done, but no satisfactory flight after the work names the modification',
  remedy: m.flightTestNotFlown_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, (modification) => {
      if (modification.flightTest !== 'done' || flightTestOf(visit, modification)) return undefined;
      const { id } = modification;
      return {
        field: 'flightTest',
        sentence: said(m.flightTestNotFlown_noFlightNames, { id }),
        data: { modification: id },
      };
    }),
};
