import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
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
      const { axis, input, response, isDirectionRight, isFullAndFree } = control;
      if (isDirectionRight && isFullAndFree) return undefined;
      const fault = isDirectionRight ? said(m.controlWrong_notFullFree) : said(m.controlWrong_wrongWay);
      return {
        sentence: said(m.controlWrong_sentence, { axis: termOf(axis), input, response, fault }),
        data: { axis },
      };
    }),
};
