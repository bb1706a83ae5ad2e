import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const flightTestOwedUnstated: Rule = {
  code: 'FLIGHT_TEST_OWED_UNSTATED',
  severity: 'blocks',
  meaning:
    'A required flight test is not among the limitations, or a major modification does not state whether one is required',
  remedy: m.flightTestOwedUnstated_remedy,
  source: read('operating limitations quoted in 8130.2 (flight test after a major change)'),
  check: ({ visit }) => {
    const stated = (visit.release?.limitations ?? []).some((text) => /\btest|prüfflug|erprobung/i.test(text));
    return hitsIn(['modifications'], visit.modifications, ({ id, classification, flightTest }) => {
      if (flightTest === undefined && classification === 'major')
        return {
          field: 'flightTest',
          sentence: said(m.flightTestOwedUnstated_modificationMajorNotSay, { id }),
          data: { modification: id },
        };
      if (flightTest !== 'owed' || stated) return undefined;
      return {
        field: 'flightTest',
        sentence: said(m.flightTestOwedUnstated_modificationOwesFlightTest, { id }),
        data: { modification: id },
      };
    });
  },
};
