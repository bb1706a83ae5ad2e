import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const readBackDiffers: Rule = {
  code: 'READ_BACK_DIFFERS',
  severity: 'blocks',
  meaning: 'What was received off the air is not what was entered',
  remedy: phrase`Find out which is wrong, set it again and receive it again`,
  source: read('EASA SIB 2011-20 as summarised; CS-ACNS'),
  check: ({ visit, results, say }) => {
    const record = visit.surveillance;
    const found = results.surveillance;
    if (!record || !found) return [];
    return record.devices.flatMap((device, index): Hit[] => {
      const { readBack, flightIdentitySet } = device;
      const own = found.devices[index];
      const path = ['surveillance', 'devices', index, 'readBack'];
      if (!readBack) return [];
      if (own?.set !== undefined && own.received !== own.set)
        return [
          {
            path,
            sentence: say.words`Device ${device.id} is set to ${device.addressSet ?? say.words`nothing`}, received was ${readBack.address}`,
            data: { device: device.id },
          },
        ];
      if (readBack.flightIdentity && flightIdentitySet && readBack.flightIdentity !== flightIdentitySet)
        return [
          {
            path,
            sentence: say.words`Device ${device.id}: flight identity ${flightIdentitySet} was entered, ${readBack.flightIdentity} received`,
            data: { device: device.id },
          },
        ];
      return [];
    });
  },
};
