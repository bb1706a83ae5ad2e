import { classDataOf } from '../../../record/classes/index.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const suspensionUnstated: Rule = {
  code: 'SUSPENSION_UNSTATED',
  severity: 'note',
  meaning: 'The class has hang positions in place of an envelope, and the record states none',
  remedy: m.suspensionUnstated_remedy,
  source: read('FAA weight-shift and powered parachute handbooks (the position goes by mass)'),
  check: ({ visit: { aircraft } }) => {
    const { computes } = classDataOf(aircraft);
    if (aircraft.suspension || !(computes.includes('hang-position') || computes.includes('attachment')))
      return undefined;
    return { path: ['aircraft', 'suspension'], sentence: said(m.suspensionUnstated_noTable) };
  },
};
