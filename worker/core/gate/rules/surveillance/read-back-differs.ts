import { isSerialCoded } from '../../../record/surveillance.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { sameSerial } from '../../serial.ts';

export const readBackDiffers: Rule = {
  code: 'READ_BACK_DIFFERS',
  severity: 'blocks',
  meaning: 'The received transmission differs from what was entered',
  remedy: m.readBackDiffers_remedy,
  source: read('14 CFR 43 App. F (f)'),
  check: ({ visit, results }) => {
    const record = visit.surveillance;
    const found = results.surveillance;
    if (!record || !found) return undefined;
    return hitsIn(['surveillance', 'devices'], record.devices, (device, index) => {
      const { readBack, flightIdentitySet } = device;
      const own = found.devices[index];

      if (!readBack) return undefined;
      const isOtherCode = isSerialCoded(device) && !sameSerial(device.addressSet ?? '', readBack.address);
      if ((own?.set !== undefined && own.received !== own.set) || isOtherCode)
        return {
          field: 'readBack',
          sentence: said(m.readBackDiffers_deviceSetReceived, {
            device: device.id,
            addressSet: device.addressSet ?? said(m.nothing),
            address: readBack.address,
          }),
          data: { device: device.id },
        };
      if (readBack.flightIdentity && flightIdentitySet && readBack.flightIdentity !== flightIdentitySet)
        return {
          field: 'readBack',
          sentence: said(m.readBackDiffers_deviceFlightIdentityEntered, {
            device: device.id,
            flightIdentitySet,
            flightIdentity: readBack.flightIdentity,
          }),
          data: { device: device.id },
        };
      return undefined;
    });
  },
};
