import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { instantOf } from '../../../units/calendar.ts';
import { isAgainst } from '../../control-movement.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const controlWrong: Rule = {
  code: 'CONTROL_WRONG',
  severity: 'blocks',
  meaning: 'A control moves the wrong way or binds',
  remedy: m.controlWrong_remedy,
  source: read('public accident reports on crossed controls after maintenance'),
  check: ({ visit }) =>
    hitsIn(['controls', 'checks'], visit.controls?.checks, (control) => {
      const { axis, input, response } = control;
      if (isRight(control)) return undefined;
      // A fault that was found, rectified and checked again stays in the record, and blocks no more.
      if (visit.controls?.checks.some((later) => isRight(later) && isSame(later, control) && isLater(later, control)))
        return undefined;
      const fault = isRightWay(control) ? said(m.controlWrong_notFullFree) : said(m.controlWrong_wrongWay);
      return {
        sentence: said(m.controlWrong_sentence, { axis: termOf(axis), input, response, fault }),
        data: { axis },
      };
    }),
};

type Check = NonNullable<Visit['controls']>['checks'][number];

const isRightWay = (check: Check): boolean => check.isDirectionRight && !isAgainst(check);
const isRight = (check: Check): boolean => isRightWay(check) && check.isFullAndFree;
const isSame = (one: Check, other: Check): boolean => one.axis === other.axis && one.control === other.control;
const isLater = (one: Check, other: Check): boolean => instantOf(one.at) > instantOf(other.at);
