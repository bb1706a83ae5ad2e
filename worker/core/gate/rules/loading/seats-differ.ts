import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const seatsDiffer: Rule = {
  code: 'SEATS_DIFFER',
  severity: 'blocks',
  meaning: 'The seats of the aircraft differ from the places of its seat stations',
  remedy: m.seatsDiffer_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft } }) => {
    const places = aircraft.stations.reduce(
      (sum, station) => (station.kind === 'pilot' || station.kind === 'passenger' ? sum + (station.places ?? 1) : sum),
      0,
    );
    // PILOT_STATION_MISSING covers an aircraft without any.
    if (places === 0 || places === aircraft.seats) return undefined;
    return {
      path: ['aircraft', 'seats'],
      sentence: said(m.seatsDiffer_differ, { seats: aircraft.seats, places }),
      data: { seats: aircraft.seats, places },
    };
  },
};
