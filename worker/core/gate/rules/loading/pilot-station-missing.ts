import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const pilotStationMissing: Rule = {
  code: 'PILOT_STATION_MISSING',
  severity: 'blocks',
  meaning: 'No station carries the pilot, so no loading can be computed',
  remedy: m.pilotStationMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.aircraft.stations.some(({ kind }) => kind === 'pilot')
      ? []
      : [{ path: ['aircraft', 'stations'], sentence: said(m.pilotStationMissing_aircraftNoStationPilot) }],
};
