import { isSerialCoded } from '../../../record/surveillance.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const addressUnreadable: Rule = {
  code: 'ADDRESS_UNREADABLE',
  severity: 'blocks',
  meaning: 'The aircraft address is not 6 hexadecimal, 8 octal or 24 binary digits',
  remedy: m.addressUnreadable_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const record = visit.surveillance;
    const found = results.surveillance;
    if (!record || !found) return undefined;
    const { address24 } = visit.aircraft;
    // A record of radio checks alone has nothing that sends an address.
    const sends =
      record.devices.some((device) => !isSerialCoded(device)) ||
      record.transponderTest !== undefined ||
      address24 !== undefined;
    const isOwnReadable = !sends || (address24 !== undefined && found.address !== undefined);
    const own = {
      path: ['aircraft', 'address24'],
      sentence: said(m.addressUnreadable_recordTransmittersAircraftAddress),
    };
    return [
      ...(isOwnReadable ? [] : [own]),
      ...hitsIn(['surveillance', 'devices'], record.devices, (device, index) => {
        const { id, addressSet } = device;
        if (addressSet === undefined || isSerialCoded(device) || found.devices[index]?.set !== undefined)
          return undefined;
        return {
          field: 'addressSet',
          sentence: said(m.addressUnreadable_deviceNoAircraftAddress, { device: id, addressSet }),
          data: { device: id },
        };
      }),
    ];
  },
};
