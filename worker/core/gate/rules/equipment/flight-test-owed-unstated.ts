import { flightTestOf } from '../../../calc/flights/flights.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const flightTestOwedUnstated: Rule = {
  code: 'FLIGHT_TEST_OWED_UNSTATED',
  severity: 'blocks',
  meaning:
    'A required flight test is neither flown nor permitted after release, or a major modification does not state one',
  remedy: m.flightTestOwedUnstated_remedy,
  source: read('operating limitations quoted in 8130.2 (flight test after a major change)'),
  check: ({ visit }) => {
    const { flightTestsAfterRelease = [] } = visit.release ?? {};
    return hitsIn(['modifications'], visit.modifications, (modification) => {
      const { id, classification, flightTest } = modification;
      if (flightTest === undefined && classification === 'major')
        return {
          field: 'flightTest',
          sentence: said(m.flightTestOwedUnstated_modificationMajorNotSay, { id }),
          data: { modification: id },
        };
      const isStated = flightTestsAfterRelease.some((after) => after.modification === id);
      if (flightTest !== 'owed' || isStated || flightTestOf(visit, modification)) return undefined;
      return {
        field: 'flightTest',
        sentence: said(m.flightTestOwedUnstated_modificationOwesFlightTest, { id }),
        data: { modification: id },
      };
    });
  },
};
