import { addressForms } from '../../../calc/surveillance/address.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const addressMismatch: Rule = {
  code: 'ADDRESS_MISMATCH',
  severity: 'blocks',
  meaning: 'The address set in a device differs from the records',
  remedy: m.addressMismatch_remedy,
  source: read('14 CFR 43 App. F (f)'),
  check: ({ visit, results }) => {
    const record = visit.surveillance;
    const found = results.surveillance;
    if (!record || !found) return undefined;
    const { address } = found;
    const set = found.devices.flatMap((device) => device.set ?? []);
    const [first] = set;
    // Several devices agree: the record is the likelier one to be wrong.
    if (set.length > 1 && first !== undefined && set.every((each) => each === first)) {
      if (address === undefined || first === address) return undefined;
      const [is, must] = [addressForms(first).hexadecimal, addressForms(address).hexadecimal];
      return {
        path: ['aircraft', 'address24'],
        sentence: said(m.addressMismatch_allDevices, { count: set.length, is, must }),
        data: { set: is, record: must },
      };
    }
    return hitsIn(['surveillance', 'devices'], record.devices, ({ id }, index) => {
      const own = found.devices[index]?.set;
      if (own === undefined || address === undefined || own === address) return undefined;
      const [is, must] = [addressForms(own).hexadecimal, addressForms(address).hexadecimal];
      return {
        field: 'addressSet',
        sentence: said(m.addressMismatch_deviceSetPapers, { id, is, must }),
        data: { device: id, set: is, papers: must },
      };
    });
  },
};
