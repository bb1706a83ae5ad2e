import { classDataOf } from '../../../record/classes/index.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsInControls } from '../../control-entries.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const controlNotOfClass: Rule = {
  code: 'CONTROL_NOT_OF_CLASS',
  severity: 'caution',
  meaning: 'A control was checked that an aircraft of this class does not usually have',
  remedy: m.controlNotOfClass_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { axes } = classDataOf(visit.aircraft);
    return hitsInControls(visit, ({ axis }) =>
      axes.includes(axis)
        ? undefined
        : {
            field: 'axis',
            sentence: said(m.controlNotOfClass_unusual, { axis: termOf(axis), of: termOf(visit.aircraft.class) }),
            data: { axis },
          },
    );
  },
};
