import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const stationLimitsCrossed: Rule = {
  code: 'STATION_LIMITS_CROSSED',
  severity: 'blocks',
  meaning: 'The minimum mass of a station is above its maximum',
  remedy: m.stationLimitsCrossed_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['aircraft', 'stations'], visit.aircraft.stations, (station) => {
      if (!('maximumMassKg' in station) || !(Number(station.minimumMassKg) > station.maximumMassKg)) return undefined;
      const { id, name, minimumMassKg = 0, maximumMassKg } = station;
      const [lower, upper] = figure.apart('mass', minimumMassKg, maximumMassKg);
      return {
        field: 'minimumMass',
        sentence: said(m.stationLimitsCrossed_lowerAboveUpper, { station: name, lower, upper }),
        data: { station: id, minimumMassKg, maximumMassKg },
      };
    }),
};
