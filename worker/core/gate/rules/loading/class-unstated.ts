import { UNSTATED_CLASS } from '../../../record/class.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const classUnstated: Rule = {
  code: 'CLASS_UNSTATED',
  severity: 'note',
  meaning: 'The record does not state the class of the aircraft, as those of earlier versions',
  remedy: m.classUnstated_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.aircraft.class === UNSTATED_CLASS
      ? { path: ['aircraft', 'class'], sentence: said(m.classUnstated_notStated) }
      : undefined,
};
