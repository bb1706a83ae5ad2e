import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { askingUnit, meantUnit } from '../../meant-unit.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { isInRange } from '../../within.ts';

/** Usual max. mass of a person in one seat, in kg. */
const USUAL = { from: 70, to: 160 } as const;

export const seatLimitUnusual: Rule = {
  code: 'SEAT_LIMIT_UNUSUAL',
  severity: 'caution',
  meaning: 'The max. mass of a seat does not fit a person, often because of its unit',
  remedy: m.seatLimitUnusual_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['aircraft', 'stations'], visit.aircraft.stations, (station) => {
      if (station.kind !== 'pilot' && station.kind !== 'passenger') return undefined;
      const { id, name, maximumMassKg, places = 1 } = station;
      const isUsual = (massKg: number): boolean => isInRange(massKg / places, USUAL);
      if (isUsual(maximumMassKg)) return undefined;
      const sentence = said(m.seatLimitUnusual_limit, {
        name,
        limit: figure.measure('mass', maximumMassKg / places),
        from: figure.number('mass', USUAL.from),
        to: figure.measure('mass', USUAL.to),
      });
      return {
        field: 'maximumMass',
        sentence: askingUnit(sentence, meantUnit('mass', maximumMassKg, visit.units, isUsual)),
        data: { station: id, perPlaceKg: maximumMassKg / places, fromKg: USUAL.from, toKg: USUAL.to },
      };
    }),
};
