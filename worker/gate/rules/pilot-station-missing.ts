import { PRACTICE, type Rule } from '../rule.ts';

export const pilotStationMissing: Rule = {
  code: 'PILOT_STATION_MISSING',
  severity: 'blocks',
  meaning: 'No station carries the pilot, so no loading can be computed',
  remedy: 'Give the pilot’s seat as a station',
  source: PRACTICE,
  check: ({ visit }) =>
    visit.aircraft.stations.some(({ kind }) => kind === 'pilot')
      ? []
      : [{ path: ['aircraft', 'stations'], sentence: 'The aircraft has no station for the pilot' }],
};
