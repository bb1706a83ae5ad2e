import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

/** Readable with little difficulty. */
const LEAST_READABILITY = 4;

export const radioReadabilityLow: Rule = {
  code: 'RADIO_READABILITY_LOW',
  severity: 'caution',
  meaning: 'A station could hardly read the radio',
  remedy: phrase`Look at antenna, cable, microphone and noise`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.surveillance?.radioChecks ?? []).flatMap(({ with: station, readability }, index): Hit[] =>
      readability >= LEAST_READABILITY
        ? []
        : [
            {
              path: ['surveillance', 'radioChecks', index, 'readability'],
              sentence: say.words`${station} read the radio ${readability} of 5`,
              data: { readability },
            },
          ],
    ),
};
