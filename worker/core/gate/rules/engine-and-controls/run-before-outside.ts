import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { rangeText } from '../../range-text.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const runBeforeOutside: Rule = {
  code: 'RUN_BEFORE_OUTSIDE',
  severity: 'caution',
  meaning: 'An engine reading was outside its limits before the work',
  remedy: m.runBeforeOutside_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['engineRuns'], visit.engineRuns, ({ when, values }) =>
      when === 'after'
        ? undefined
        : hits(values, ({ name, unit, value, least, most }, index) => {
            const isWithin =
              (least === undefined || isAtLeast(value, least)) && (most === undefined || isAtMost(value, most));
            if (isWithin) return undefined;
            return {
              field: ['values', index, 'value'],
              sentence: said(m.runBeforeOutside_outside, {
                name,
                value: figure.asIs(value),
                unit,
                range: rangeText({ least, most }),
              }),
              data: { name, value },
            };
          }),
    ),
};
