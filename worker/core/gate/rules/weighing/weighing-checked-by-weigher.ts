import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const weighingCheckedByWeigher: Rule = {
  code: 'WEIGHING_CHECKED_BY_WEIGHER',
  severity: 'caution',
  meaning: 'The person who weighed the aircraft also checked the weighing',
  remedy: m.weighingCheckedByWeigher_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { weighing } = visit;
    if (!weighing || weighing.checkedBy !== weighing.by) return undefined;
    const name = visit.people.find(({ id }) => id === weighing.by)?.name ?? weighing.by;
    return {
      path: ['weighing', 'checkedBy'],
      sentence: said(m.weighingCheckedByWeigher_same, { name }),
      data: { by: weighing.by },
    };
  },
};
