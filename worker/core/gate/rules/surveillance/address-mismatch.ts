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
    return hitsIn(['surveillance', 'devices'], record.devices, ({ id }, index) => {
      const set = found.devices[index]?.set;
      if (set === undefined || found.address === undefined || set === found.address) return undefined;
      const [is, must] = [addressForms(set).hexadecimal, addressForms(found.address).hexadecimal];
      return {
        field: 'addressSet',
        sentence: said(m.addressMismatch_deviceSetPapers, { id, is, must }),
        data: { device: id, set: is, papers: must },
      };
    });
  },
};
