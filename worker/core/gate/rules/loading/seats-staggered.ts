import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Distance in mm from which one seat can be behind another. */
const BEHIND_MM = 300;

export const seatsStaggered: Rule = {
  code: 'SEATS_STAGGERED',
  severity: 'caution',
  meaning: 'The arms of two seats differ by too little for one to be behind the other',
  remedy: m.seatsStaggered_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft } }) => {
    const seats = aircraft.stations.flatMap((station) =>
      station.kind === 'pilot' || station.kind === 'passenger' ? [station] : [],
    );
    return hitsIn(['aircraft', 'stations'], aircraft.stations, (station) => {
      const at = seats.findIndex(({ id }) => id === station.id);
      const seat = seats[at];
      const other = seats
        .slice(0, Math.max(0, at))
        .find(({ armMm }) => seat && armMm !== seat.armMm && Math.abs(armMm - seat.armMm) < BEHIND_MM);
      if (!seat || !other) return undefined;
      return {
        field: 'arm',
        sentence: said(m.seatsStaggered_arms, {
          name: seat.name,
          arm: figure.measure('arm', seat.armMm),
          other: other.name,
          otherArm: figure.measure('arm', other.armMm),
        }),
        data: { station: seat.id, armMm: seat.armMm, otherMm: other.armMm },
      };
    });
  },
};
