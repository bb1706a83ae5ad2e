import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { limitsOf } from '../../stated-limits.ts';

export const stationTwice: Rule = {
  code: 'STATION_TWICE',
  severity: 'caution',
  meaning: 'A loading limit names the same station twice',
  remedy: m.stationTwice_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hits(limitsOf(visit.aircraft), ({ limit: { text, stations }, path }) => {
      const index = stations.findIndex((station, at) => stations.indexOf(station) < at);
      const station = stations[index];
      return station === undefined
        ? undefined
        : {
            path: [...path, 'stations', index],
            sentence: said(m.stationTwice_limitNames, { text, station }),
            data: { station },
          };
    }),
};
