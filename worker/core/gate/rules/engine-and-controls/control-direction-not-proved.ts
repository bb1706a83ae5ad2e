import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { instantOf } from '../../../units/calendar.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const controlDirectionNotProved: Rule = {
  code: 'CONTROL_DIRECTION_NOT_PROVED',
  severity: 'blocks',
  meaning: 'A control that was disturbed was not proved by direction afterwards',
  remedy: m.controlDirectionNotProved_remedy,
  source: read('public accident reports on crossed controls after maintenance'),
  check: ({ visit }) =>
    (visit.controls?.disturbed ?? []).flatMap(({ axis, what, at }, index): Hit[] => {
      const proof = visit.controls?.checks.some(
        (check) => check.axis === axis && check.isDirectionRight && instantOf(check.at) >= instantOf(at),
      );
      return proof
        ? []
        : [
            {
              path: ['controls', 'disturbed', index],
              sentence: said(m.controlDirectionNotProved_notProvedDirectionAfter, { what, axis: termOf(axis) }),
              data: { axis },
            },
          ];
    }),
};
