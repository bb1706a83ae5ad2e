import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf, daysBetween } from '../../../units/calendar.ts';
import { memory, type Rule } from '../../rule.ts';

export const releaseLate: Rule = {
  code: 'RELEASE_LATE',
  severity: 'caution',
  meaning: 'The work ended long before the release',
  remedy: m.releaseLate_remedy,
  source: memory('ML.A.305(a), entries within 30 days'),
  values: ['releaseDays'],
  check: ({ visit: { visit }, regime, at }) => {
    if (visit.workEndedAt === undefined) return undefined;
    const days = daysBetween(dateOf(visit.workEndedAt), dateOf(at));
    const limit = regime.releaseDays.value;
    if (days <= limit) return undefined;
    return {
      path: ['visit', 'workEndedAt'],
      sentence: said(m.releaseLate_workEnded, { ended: figure.timestamp(visit.workEndedAt), days, limit }),
      data: { days, limit },
    };
  },
};
