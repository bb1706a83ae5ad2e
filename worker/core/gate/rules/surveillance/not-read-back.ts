import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { unanswered } from '../../obligations/requirement.ts';
import { memory, type Rule } from '../../rule.ts';

export const notReadBack: Rule = {
  code: 'NOT_READ_BACK',
  severity: 'caution',
  meaning: 'The transmission of a device was not received and checked',
  remedy: m.notReadBack_remedy,
  source: memory('EASA SIB 2011-20'),
  check: ({ visit, requirements }) => {
    // READ_BACK_MISSING says it of an item that was worked on.
    const missing = new Set(unanswered(requirements, 'read-back').map(({ event }) => event.item?.id));
    return hitsIn(['surveillance', 'devices'], visit.surveillance?.devices, ({ id, kind, item, readBack }) => {
      if (readBack || kind === 'locator' || (item !== undefined && missing.has(item))) return undefined;
      return {
        field: 'readBack',
        sentence: said(m.notReadBack_deviceNotReceivedOff, { id }),
        data: { device: id },
      };
    });
  },
};
