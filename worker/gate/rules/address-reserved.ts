import { phrase } from '../../words/words.ts';
import { memory, type Rule } from '../rule.ts';

export const addressReserved: Rule = {
  code: 'ADDRESS_RESERVED',
  severity: 'blocks',
  meaning: 'All zeros or all ones is never the address of an aircraft',
  remedy: phrase`Enter the address of the certificate of registration`,
  source: memory('ICAO Annex 10, Vol. III, ch. 9'),
  check: ({ results, say }) => {
    const { forms } = results.surveillance ?? {};
    return forms?.isReserved
      ? [
          {
            path: ['aircraft', 'address24'],
            sentence: say.words`Address ${forms.hexadecimal} is never given to an aircraft`,
          },
        ]
      : [];
  },
};
