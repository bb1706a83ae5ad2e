import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const pilotStationMissing: Rule = {
  code: 'PILOT_STATION_MISSING',
  severity: 'blocks',
  meaning: 'The pilot has no station, so no loading can be calculated',
  remedy: m.pilotStationMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    if (visit.aircraft.stations.some(({ kind }) => kind === 'pilot')) return undefined;
    return { path: ['aircraft', 'stations'], sentence: said(m.pilotStationMissing_aircraftNoStationPilot) };
  },
};
