import { memory, type Rule } from '../rule.ts';

export const addressReserved: Rule = {
  code: 'ADDRESS_RESERVED',
  severity: 'blocks',
  meaning: 'All zeros or all ones is never the address of an aircraft',
  remedy: 'Enter the address of the certificate of registration',
  source: memory('ICAO Annex 10, Vol. III, ch. 9'),
  check: ({ results }) => {
    const { forms } = results.surveillance ?? {};
    return forms?.isReserved
      ? [{ path: ['aircraft', 'address24'], sentence: `Address ${forms.hexadecimal} is never given to an aircraft` }]
      : [];
  },
};
