import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const panelsNotClosed: Rule = {
  code: 'PANELS_NOT_CLOSED',
  severity: 'blocks',
  meaning: 'It is not confirmed that all panels were refitted',
  remedy: m.panelsNotClosed_remedy,
  source: read('145.A.48 (access panels refitted)'),
  check: ({ visit: { closing, inspection } }) => {
    const isDone = closing ? closing.panelsClosed : inspection?.panelsClosed;
    if (isDone !== false) return undefined;
    return {
      path: [closing ? 'closing' : 'inspection', 'panelsClosed'],
      sentence: said(m.panelsNotClosed_recordNotStateAll),
    };
  },
};
