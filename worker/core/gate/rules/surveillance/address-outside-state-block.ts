import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

/** Q begins no nationality mark (ITU Radio Regulations, App. 42, from memory): demo aircraft have no block. */
export const addressOutsideStateBlock: Rule = {
  code: 'ADDRESS_OUTSIDE_STATE_BLOCK',
  severity: 'caution',
  meaning: 'The address is in no State’s block, or belongs to another registration',
  remedy: m.addressOutsideStateBlock_remedy,
  source: read('two open data files that agree on the block, named in state-blocks.ts'),
  check: ({ visit, results }) => {
    const { forms } = results.surveillance ?? {};
    if (!forms) return undefined;
    const path = ['aircraft', 'address24'];
    const { registration } = visit.aircraft;
    const isDemo = registration.startsWith('Q');
    if (forms.registration && forms.registration !== registration.replace('-', ''))
      return {
        path,
        sentence: said(m.addressOutsideStateBlock_addressBelongsNot, {
          hexadecimal: forms.hexadecimal,
          registration: forms.registration,
          registration2: registration,
        }),
        data: { address: forms.hexadecimal },
      };
    if (forms.state || isDemo) return undefined;
    return {
      path,
      sentence: said(m.addressOutsideStateBlock_addressNoBlockKnown, { hexadecimal: forms.hexadecimal }),
      data: { address: forms.hexadecimal },
    };
  },
};
