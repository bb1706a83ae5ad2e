import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { rangeText } from '../../range-text.ts';
import { type Rule, read } from '../../rule.ts';

export const taskValueOutsideLimits: Rule = {
  code: 'TASK_VALUE_OUTSIDE_LIMITS',
  severity: 'blocks',
  meaning: 'A task is satisfactory, but its measured value is outside its limits',
  remedy: m.taskValueOutsideLimits_remedy,
  source: read('14 CFR 43.13(b) (condition at least equal to the original)'),
  check: ({ visit }) =>
    hitsIn(['inspection', 'tasks'], visit.inspection?.tasks, ({ id, result, reading }) => {
      if (result !== 'satisfactory' || !reading) return undefined;
      const { value, unit, least, most } = reading;
      const isWithin =
        (least === undefined || isAtLeast(value, least)) && (most === undefined || isAtMost(value, most));
      if (isWithin) return undefined;
      return {
        field: 'reading',
        sentence: said(m.taskValueOutsideLimits_satisfactoryOutside, {
          id,
          value: figure.asIs(value),
          unit,
          range: rangeText({ least, most }),
        }),
        data: { task: id, value, ...(least !== undefined && { least }), ...(most !== undefined && { most }) },
      };
    }),
};
