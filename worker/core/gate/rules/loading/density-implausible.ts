import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { askingUnit, meantUnit } from '../../meant-unit.ts';
import { type Rule, read } from '../../rule.ts';
import { isInRange } from '../../within.ts';

/** In kg/l: from light petrol in the heat to heavy turbine fuel in the cold, and from fresh to salt water. */
const RANGES = {
  fuel: { from: 0.65, to: 0.85 },
  water: { from: 0.99, to: 1.03 },
} as const;

export const densityImplausible: Rule = {
  code: 'DENSITY_IMPLAUSIBLE',
  severity: 'blocks',
  meaning: 'The density of a tank is not that of fuel or of water, often because of its unit',
  remedy: m.densityImplausible_remedy,
  source: read('AMT Handbook General, standard weights: avgas 6.0, turbine fuel 6.7, water 8.35 lb/US gal'),
  check: ({ visit }) =>
    hitsIn(['aircraft', 'stations'], visit.aircraft.stations, (station) => {
      if (!('capacityL' in station)) return undefined;
      const range = RANGES[station.kind];
      const { id, name, densityKgPerL } = station;
      if (isInRange(densityKgPerL, range)) return undefined;
      const sentence = said(m.densityImplausible_outside, {
        name,
        density: figure.measure('density', densityKgPerL),
        from: figure.number('density', range.from, figure.MIN),
        to: figure.measure('density', range.to, figure.MAX),
      });
      return {
        field: 'density',
        sentence: askingUnit(
          sentence,
          meantUnit('density', densityKgPerL, visit.units, (value) => isInRange(value, range)),
        ),
        data: { station: id, densityKgPerL, fromKgPerL: range.from, toKgPerL: range.to },
      };
    }),
};
