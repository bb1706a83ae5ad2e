import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const weighingUnchecked: Rule = {
  code: 'WEIGHING_UNCHECKED',
  severity: 'caution',
  meaning: 'Nobody checked readings and arms of the weighing',
  remedy: m.weighingUnchecked_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.weighing && visit.weighing.checkedBy === undefined
      ? { path: ['weighing', 'checkedBy'], sentence: said(m.weighingUnchecked_nobody) }
      : undefined,
};
