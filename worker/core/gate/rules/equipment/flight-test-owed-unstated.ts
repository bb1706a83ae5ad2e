import { isFlightTestOutstanding } from '../../../calc/flights/flights.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const flightTestOwedUnstated: Rule = {
  code: 'FLIGHT_TEST_OWED_UNSTATED',
  severity: 'blocks',
  meaning:
    'A flight test is neither flown nor permitted after release, or the modification does not state that one is required',
  remedy: m.flightTestOwedUnstated_remedy,
  source: read('operating limitations quoted in 8130.2 (flight test after a major change)'),
  check: ({ visit }) => {
    const { flightTestsAfterRelease = [] } = visit.release ?? {};
    const needed = hitsIn(['modifications'], visit.modifications, (modification) => {
      const { id, classification, flightTest } = modification;
      if (flightTest === undefined && classification === 'major')
        return {
          field: 'flightTest',
          sentence: said(m.flightTestOwedUnstated_modificationMajorNotSay, { id }),
          data: { modification: id },
        };
      const isStated = flightTestsAfterRelease.some((after) => after.modification === id);
      if (isStated || !isFlightTestOutstanding(visit, modification)) return undefined;
      return {
        field: 'flightTest',
        sentence: said(m.flightTestOwedUnstated_modificationOwesFlightTest, { id }),
        data: { modification: id },
      };
    });
    const unneeded = hitsIn(['release', 'flightTestsAfterRelease'], flightTestsAfterRelease, ({ modification: id }) => {
      const modification = visit.modifications?.find((each) => each.id === id);
      if (!modification || isFlightTestOutstanding(visit, modification)) return undefined;
      return {
        field: 'modification',
        sentence: said(m.flightTestOwedUnstated_notOutstanding, { id }),
        data: { modification: id },
      };
    });
    return [...needed, ...unneeded];
  },
};
