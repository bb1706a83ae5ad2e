import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const addressNotSet: Rule = {
  code: 'ADDRESS_NOT_SET',
  severity: 'blocks',
  meaning: 'A device that transmits the aircraft address has no address entered',
  remedy: m.addressNotSet_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['surveillance', 'devices'], visit.surveillance?.devices, ({ id, addressSet }) => {
      if (addressSet) return undefined;
      return {
        field: 'addressSet',
        sentence: said(m.addressNotSet_deviceNoAddressEntered, { id }),
        data: { device: id },
      };
    }),
};
