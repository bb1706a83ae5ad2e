import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const controlWrong: Rule = {
  code: 'CONTROL_WRONG',
  severity: 'blocks',
  meaning: 'A control moves the wrong way or binds',
  remedy: m.controlWrong_remedy,
  source: read('public accident reports on crossed controls after maintenance'),
  check: ({ visit }) =>
    (visit.controls?.checks ?? []).flatMap(
      ({ axis, input, response, isDirectionRight, isFullAndFree }, index): Hit[] =>
        isDirectionRight && isFullAndFree
          ? []
          : [
              {
                path: ['controls', 'checks', index],
                sentence: said(m.controlWrong_sentence, {
                  axis: termOf(axis),
                  input,
                  response,
                  fault: isDirectionRight ? said(m.controlWrong_notFullFree) : said(m.controlWrong_wrongWay),
                }),
                data: { axis },
              },
            ],
    ),
};
