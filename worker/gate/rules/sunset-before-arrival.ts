import { printMoment } from '../../units/calendar.ts';
import { printNumber } from '../../units/rounding.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const sunsetBeforeArrival: Rule = {
  code: 'SUNSET_BEFORE_ARRIVAL',
  severity: 'caution',
  meaning: 'The flight home would end after sunset',
  remedy: 'Fly another day, or from a nearer place',
  source: PRACTICE,
  check: ({ results }) => {
    const { daylightMin, sunsetAt } = results.clock;
    if (daylightMin === undefined || sunsetAt === undefined || daylightMin >= 0) return [];
    return [
      {
        path: ['departure'],
        sentence: `The flight would end ${printNumber(-daylightMin, 0)} minutes after sunset, ${printMoment(sunsetAt)}`,
        data: { daylightMin },
      },
    ];
  },
};
