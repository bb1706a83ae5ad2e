import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { instantOf } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const controlDirectionNotProved: Rule = {
  code: 'CONTROL_DIRECTION_NOT_PROVED',
  severity: 'blocks',
  meaning: 'A control was disturbed, and its direction was not checked afterwards',
  remedy: m.controlDirectionNotProved_remedy,
  source: read('public accident reports on crossed controls after maintenance'),
  check: ({ visit }) =>
    hitsIn(['controls', 'disturbed'], visit.controls?.disturbed, ({ axis, what, at }) => {
      const proof = visit.controls?.checks.some(
        (check) => check.axis === axis && check.isDirectionRight && instantOf(check.at) >= instantOf(at),
      );
      if (proof) return undefined;
      return {
        sentence: said(m.controlDirectionNotProved_notProvedDirectionAfter, { what, axis: termOf(axis) }),
        data: { axis },
      };
    }),
};
