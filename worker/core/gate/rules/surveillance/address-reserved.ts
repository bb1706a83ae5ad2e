import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const addressReserved: Rule = {
  code: 'ADDRESS_RESERVED',
  severity: 'blocks',
  meaning: 'All zeros or all ones is never the address of an aircraft',
  remedy: m.addressReserved_remedy,
  source: PRACTICE,
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
