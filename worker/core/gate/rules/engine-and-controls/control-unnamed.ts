import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsInControls } from '../../control-entries.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const controlUnnamed: Rule = {
  code: 'CONTROL_UNNAMED',
  severity: 'blocks',
  meaning: 'A control of another kind has no name',
  remedy: m.controlUnnamed_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsInControls(visit, ({ axis, control }) =>
      axis === 'other' && control === undefined
        ? { field: 'control', sentence: said(m.controlUnnamed_whichControl) }
        : undefined,
    ),
};
