import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const pilotStationMissing: Rule = {
  code: 'PILOT_STATION_MISSING',
  severity: 'blocks',
  meaning: 'No station carries the pilot, so no loading can be computed',
  remedy: phrase`Give the pilot’s seat as a station`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    visit.aircraft.stations.some(({ kind }) => kind === 'pilot')
      ? []
      : [{ path: ['aircraft', 'stations'], sentence: say.words`The aircraft has no station for the pilot` }],
};
