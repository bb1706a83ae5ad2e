import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const variationMissing: Rule = {
  code: 'VARIATION_MISSING',
  severity: 'blocks',
  meaning: 'Headings were true, but no position is given for the magnetic variation',
  remedy: phrase`Give the position of the base`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    visit.compass?.reference === 'true' && !visit.compass.position
      ? [
          {
            path: ['compass', 'position'],
            sentence: say.words`The headings were true; without a position their variation is not known`,
          },
        ]
      : [],
};
