import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const flightTestOwedUnstated: Rule = {
  code: 'FLIGHT_TEST_OWED_UNSTATED',
  severity: 'blocks',
  meaning: 'A flight test is owed and the release does not say so, or a major modification says nothing about one',
  remedy: m.flightTestOwedUnstated_remedy,
  source: read('operating limitations quoted in 8130.2 (flight test after a major change)'),
  check: ({ visit }) => {
    const stated = (visit.release?.limitations ?? []).some((text) => /\btest|prüfflug|erprobung/i.test(text));
    return (visit.modifications ?? []).flatMap(({ id, classification, flightTest }, index): Hit[] => {
      const path = ['modifications', index, 'flightTest'];
      if (flightTest === undefined && classification === 'major')
        return [
          {
            path,
            sentence: said(m.flightTestOwedUnstated_modificationMajorNotSay, { id }),
            data: { modification: id },
          },
        ];
      if (flightTest !== 'owed' || stated) return [];
      return [
        {
          path,
          sentence: said(m.flightTestOwedUnstated_modificationOwesFlightTest, { id }),
          data: { modification: id },
        },
      ];
    });
  },
};
