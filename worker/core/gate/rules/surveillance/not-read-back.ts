import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const notReadBack: Rule = {
  code: 'NOT_READ_BACK',
  severity: 'caution',
  meaning: 'The transmission of a device was not received and checked',
  remedy: m.notReadBack_remedy,
  source: read('EASA SIB 2011-20 as summarised'),
  check: ({ visit }) =>
    hitsIn(['surveillance', 'devices'], visit.surveillance?.devices, ({ id, kind, readBack }) => {
      if (readBack || kind === 'locator') return undefined;
      return {
        field: 'readBack',
        sentence: said(m.notReadBack_deviceNotReceivedOff, { id }),
        data: { device: id },
      };
    }),
};
