import { REGISTRATION } from '../../patterns.ts';
import { phrase } from '../../words/words.ts';
import { memory, type Rule } from '../rule.ts';

export const registrationMalformed: Rule = {
  code: 'REGISTRATION_MALFORMED',
  severity: 'blocks',
  meaning: 'The registration is not written as marks are',
  remedy: phrase`Write nationality mark, hyphen where used, registration mark, in capitals`,
  source: memory('ICAO Annex 7'),
  check: ({ visit, say }) => {
    const { registration } = visit.aircraft;
    if (REGISTRATION.test(registration)) return [];
    return [
      {
        path: ['aircraft', 'registration'],
        sentence: say.words`Registration “${registration}” is not written as marks are`,
        data: { registration },
      },
    ];
  },
};
