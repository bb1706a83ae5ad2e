import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const weighedOutdoors: Rule = {
  code: 'WEIGHED_OUTDOORS',
  severity: 'caution',
  meaning: 'The aircraft was weighed in the open',
  remedy: phrase`Weigh in a closed hangar, or accept several readings in little wind`,
  source: read('CAP 562 weighing leaflet'),
  check: ({ visit, say }) =>
    visit.weighing?.indoors === false
      ? [
          {
            path: ['weighing', 'indoors'],
            sentence: say.words`The aircraft was weighed in the open, where wind disturbs the scales`,
          },
        ]
      : [],
};
