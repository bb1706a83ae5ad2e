import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const identitiesDisagree: Rule = {
  code: 'IDENTITIES_DISAGREE',
  severity: 'blocks',
  meaning: 'Two devices send different flight identities',
  remedy: phrase`Enter the same in all`,
  source: read('CS-ACNS (same identity on all transmitters)'),
  check: ({ visit, say }) => {
    const set = (visit.surveillance?.devices ?? []).flatMap(({ flightIdentitySet }) => flightIdentitySet ?? []);
    if (new Set(set).size <= 1) return [];
    return [
      {
        path: ['surveillance', 'devices'],
        sentence: say.words`The devices send different flight identities: ${[...new Set(set)].join(', ')}`,
      },
    ];
  },
};
