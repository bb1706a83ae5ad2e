import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const addressNotSet: Rule = {
  code: 'ADDRESS_NOT_SET',
  severity: 'blocks',
  meaning: 'A transmitter of an aircraft address has none entered',
  remedy: m.addressNotSet_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.surveillance?.devices ?? []).flatMap(({ id, addressSet }, index): Hit[] =>
      addressSet
        ? []
        : [
            {
              path: ['surveillance', 'devices', index, 'addressSet'],
              sentence: said(m.addressNotSet_deviceNoAddressEntered, { id }),
              data: { device: id },
            },
          ],
    ),
};
