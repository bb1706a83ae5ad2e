import { phrase } from '../../words/words.ts';
import { type Hit, memory, type Rule } from '../rule.ts';

export const addressUnreadable: Rule = {
  code: 'ADDRESS_UNREADABLE',
  severity: 'blocks',
  meaning: 'The aircraft address is not 6 hexadecimal, 8 octal or 24 binary digits',
  remedy: phrase`Copy it from the certificate of registration`,
  source: memory('ICAO Annex 10, Vol. III, ch. 9'),
  check: ({ visit, results, say }) => {
    const record = visit.surveillance;
    const found = results.surveillance;
    if (!record || !found) return [];
    const hits: Hit[] = [];
    if (visit.aircraft.address24 === undefined || found.address === undefined) {
      hits.push({
        path: ['aircraft', 'address24'],
        sentence: say.words`The record has transmitters of an aircraft address, but no address that can be read`,
      });
    }
    for (const [index, device] of record.devices.entries()) {
      if (device.addressSet !== undefined && found.devices[index]?.set === undefined) {
        hits.push({
          path: ['surveillance', 'devices', index, 'addressSet'],
          sentence: say.words`Device ${device.id}: “${device.addressSet}” is no aircraft address`,
          data: { device: device.id },
        });
      }
    }
    return hits;
  },
};
