import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { memory, type Rule } from '../../rule.ts';

export const addressReserved: Rule = {
  code: 'ADDRESS_RESERVED',
  severity: 'blocks',
  meaning: 'All zeros or all ones is never the address of an aircraft',
  remedy: m.addressReserved_remedy,
  source: memory('ICAO Annex 10, Vol. III, ch. 9'),
  check: ({ results }) => {
    const { forms } = results.surveillance ?? {};
    return forms?.isReserved
      ? {
          path: ['aircraft', 'address24'],
          sentence: said(m.addressReserved_addressNeverGivenAircraft, { hexadecimal: forms.hexadecimal }),
        }
      : undefined;
  },
};
