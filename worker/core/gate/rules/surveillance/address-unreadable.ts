import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, memory, type Rule } from '../../rule.ts';

export const addressUnreadable: Rule = {
  code: 'ADDRESS_UNREADABLE',
  severity: 'blocks',
  meaning: 'The aircraft address is not 6 hexadecimal, 8 octal or 24 binary digits',
  remedy: m.addressUnreadable_remedy,
  source: memory('ICAO Annex 10, Vol. III, ch. 9'),
  check: ({ visit, results }) => {
    const record = visit.surveillance;
    const found = results.surveillance;
    if (!record || !found) return [];
    const hits: Hit[] = [];
    if (visit.aircraft.address24 === undefined || found.address === undefined) {
      hits.push({
        path: ['aircraft', 'address24'],
        sentence: said(m.addressUnreadable_recordTransmittersAircraftAddress),
      });
    }
    for (const [index, device] of record.devices.entries()) {
      if (device.addressSet !== undefined && found.devices[index]?.set === undefined) {
        hits.push({
          path: ['surveillance', 'devices', index, 'addressSet'],
          sentence: said(m.addressUnreadable_deviceNoAircraftAddress, {
            device: device.id,
            addressSet: device.addressSet,
          }),
          data: { device: device.id },
        });
      }
    }
    return hits;
  },
};
