import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const sunsetBeforeArrival: Rule = {
  code: 'SUNSET_BEFORE_ARRIVAL',
  severity: 'caution',
  meaning: 'The flight home would end after sunset',
  remedy: phrase`Fly another day, or from a nearer place`,
  source: PRACTICE,
  check: ({ results, say }) => {
    const { daylightMin, sunsetAt, isDarkAtArrival } = results.clock;
    if (!isDarkAtArrival) return [];
    return [
      {
        path: ['departure'],
        sentence:
          daylightMin === undefined || sunsetAt === undefined
            ? say.words`The flight would end in the dark: the sun has been down for more than a day`
            : say.words`The flight would end ${say.plain(-daylightMin, 0)} minutes after sunset, ${say.moment(sunsetAt)}`,
        data: daylightMin === undefined ? {} : { daylightMin },
      },
    ];
  },
};
