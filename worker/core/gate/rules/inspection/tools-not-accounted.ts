import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const toolsNotAccounted: Rule = {
  code: 'TOOLS_NOT_ACCOUNTED',
  severity: 'blocks',
  meaning: 'It is not confirmed that all tools were counted back',
  remedy: m.toolsNotAccounted_remedy,
  source: read('145.A.48 (clear of tools and equipment)'),
  check: ({ visit: { closing, inspection } }) => {
    const isDone = closing ? closing.toolsAccountedFor : inspection?.toolsAccountedFor;
    if (isDone !== false) return undefined;
    return {
      path: [closing ? 'closing' : 'inspection', 'toolsAccountedFor'],
      sentence: said(m.toolsNotAccounted_recordNotStateAll),
    };
  },
};
