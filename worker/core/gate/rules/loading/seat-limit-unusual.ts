import type { LoadStation } from '../../../record/visit.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type EntryHit, hitsIn } from '../../hits.ts';
import { askingUnit, meantUnit } from '../../meant-unit.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { isInRange } from '../../within.ts';

/** Usual max. mass of a person in one seat, and min. mass of a pilot, in kg. */
const USUAL = { from: 70, to: 160 } as const;
const USUAL_LEAST = { from: 45, to: 110 } as const;

export const seatLimitUnusual: Rule = {
  code: 'SEAT_LIMIT_UNUSUAL',
  severity: 'caution',
  meaning: 'The max. mass of a seat, or the min. mass of its pilot, does not fit a person',
  remedy: m.seatLimitUnusual_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['aircraft', 'stations'], visit.aircraft.stations, (station) => {
      if (station.kind !== 'pilot' && station.kind !== 'passenger') return undefined;
      const { id, name, maximumMassKg, places = 1 } = station;
      const isUsual = (massKg: number): boolean => isInRange(massKg / places, USUAL);
      if (isUsual(maximumMassKg)) return leastUnusual(station);
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

function leastUnusual({ id, name, minimumMassKg }: LoadStation): EntryHit | undefined {
  if (minimumMassKg === undefined || minimumMassKg === 0 || isInRange(minimumMassKg, USUAL_LEAST)) return undefined;
  return {
    field: 'minimumMass',
    sentence: said(m.seatLimitUnusual_least, {
      name,
      limit: figure.measure('mass', minimumMassKg),
      from: figure.number('mass', USUAL_LEAST.from),
      to: figure.measure('mass', USUAL_LEAST.to),
    }),
    data: { station: id, minimumMassKg },
  };
}
