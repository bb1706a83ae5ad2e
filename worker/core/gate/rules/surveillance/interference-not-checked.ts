import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const interferenceNotChecked: Rule = {
  code: 'INTERFERENCE_NOT_CHECKED',
  severity: 'caution',
  meaning: 'No check for interference with radio and compass is recorded',
  remedy: m.interferenceNotChecked_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.surveillance && visit.surveillance.interferenceChecked !== true
      ? {
          path: ['surveillance', 'interferenceChecked'],
          sentence: said(m.interferenceNotChecked_nobodyCheckedWhetherEquipment),
        }
      : undefined,
};
