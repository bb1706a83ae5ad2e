import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const sunsetBeforeArrival: Rule = {
  code: 'SUNSET_BEFORE_ARRIVAL',
  severity: 'caution',
  meaning: 'The flight home would end after sunset',
  remedy: phrase`Fly another day, or from a nearer place`,
  source: PRACTICE,
  check: ({ results, say }) => {
    const { daylightMin, sunsetAt } = results.clock;
    if (daylightMin === undefined || sunsetAt === undefined || isAtLeast(daylightMin, 0)) return [];
    return [
      {
        path: ['departure'],
        sentence: say.words`The flight would end ${say.plain(-daylightMin, 0)} minutes after sunset, ${say.moment(sunsetAt)}`,
        data: { daylightMin },
      },
    ];
  },
};
