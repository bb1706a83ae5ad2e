import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import type { Station } from '../../../record/visit.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Full tanks may leave no room for anybody, but hardly ever exceed the useful load by half. */
const TANK_SHARE = 1.5;

export const stationAboveUsefulLoad: Rule = {
  code: 'STATION_ABOVE_USEFUL_LOAD',
  severity: 'caution',
  meaning: 'A station may carry more than the whole aircraft; a tank holds more than 1.5 times that',
  remedy: m.stationAboveUsefulLoad_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft }, results: { schedule } }) => {
    if (!schedule) return undefined;
    const usefulKg = aircraft.maximumMassKg - schedule.massKg;
    return hits(aircraft.stations, (station, index) => {
      const { id, name } = station;
      const { mostKg, limitKg, field } = compared(station, usefulKg);
      if (usefulKg <= 0 || isAtMost(mostKg, limitKg)) return undefined;
      const [taken, useful] = figure.apart('mass', mostKg, usefulKg);
      return {
        path: ['aircraft', 'stations', index, field],
        sentence: said(m.stationAboveUsefulLoad_stationCarries, { station: name, taken, useful }),
        data: { station: id, mostKg, usefulKg },
      };
    });
  },
};

function compared(station: Station, usefulKg: number): { mostKg: number; limitKg: number; field: string } {
  return 'maximumMassKg' in station
    ? { mostKg: station.maximumMassKg, limitKg: usefulKg, field: 'maximumMass' }
    : { mostKg: station.capacityL * station.densityKgPerL, limitKg: TANK_SHARE * usefulKg, field: 'capacity' };
}
