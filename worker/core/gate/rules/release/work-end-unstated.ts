import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const workEndUnstated: Rule = {
  code: 'WORK_END_UNSTATED',
  severity: 'blocks',
  meaning: 'The end of the work is not recorded',
  remedy: m.workEndUnstated_remedy,
  source: read('14 CFR 43.9(a)(2) (date of completion)'),
  check: ({ visit }) => {
    const worked = visit.modifications?.length || visit.inspection || visit.worksheet?.length;
    return worked && !visit.visit.workEndedAt
      ? { path: ['visit', 'workEndedAt'], sentence: said(m.workEndUnstated_recordNotSayWhen) }
      : undefined;
  },
};
