import { addressForms } from '../../../calc/surveillance/address.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const addressMismatch: Rule = {
  code: 'ADDRESS_MISMATCH',
  severity: 'blocks',
  meaning: 'A device is set to an address that is not the one in the papers',
  remedy: m.addressMismatch_remedy,
  source: read('EASA SIB 2011-20 (wrong 24-bit address) as summarised'),
  check: ({ visit, results }) => {
    const record = visit.surveillance;
    const found = results.surveillance;
    if (!record || !found) return [];
    return record.devices.flatMap(({ id }, index): Hit[] => {
      const set = found.devices[index]?.set;
      if (set === undefined || found.address === undefined || set === found.address) return [];
      const [is, must] = [addressForms(set).hexadecimal, addressForms(found.address).hexadecimal];
      return [
        {
          path: ['surveillance', 'devices', index, 'addressSet'],
          sentence: said(m.addressMismatch_deviceSetPapers, { id, is, must }),
          data: { device: id, set: is, papers: must },
        },
      ];
    });
  },
};
