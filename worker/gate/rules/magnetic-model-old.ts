import { dateOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const magneticModelOld: Rule = {
  code: 'MAGNETIC_MODEL_OLD',
  severity: 'caution',
  meaning: 'The magnetic model was not made for the day of the swing',
  remedy: phrase`Use a reference in magnetic headings, or a newer edition`,
  source: read('World Magnetic Model, validity of five years'),
  check: ({ visit, results, say }) => {
    const variation = results.compass?.variation;
    const on = visit.compass && dateOf(visit.compass.swungAt);
    if (!variation || !on || (variation.validFrom <= on && on <= variation.validUntil)) return [];
    return [
      {
        path: ['compass', 'swungAt'],
        sentence: say.words`${variation.model} holds until ${say.date(variation.validUntil)}; the compass was swung ${say.date(on)}`,
        data: { validUntil: variation.validUntil },
      },
    ];
  },
};
