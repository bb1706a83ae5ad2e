import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const controlWrong: Rule = {
  code: 'CONTROL_WRONG',
  severity: 'blocks',
  meaning: 'A control moves the wrong way or binds',
  remedy: phrase`Ground the aircraft and put it right`,
  source: read('public accident reports on crossed controls after maintenance'),
  check: ({ visit, say }) =>
    (visit.controls?.checks ?? []).flatMap(
      ({ axis, input, response, isDirectionRight, isFullAndFree }, index): Hit[] =>
        isDirectionRight && isFullAndFree
          ? []
          : [
              {
                path: ['controls', 'checks', index],
                sentence: `${say.term(axis)}: ${input}, ${response}: ${isDirectionRight ? say.words`not full and free` : say.words`the wrong way`}`,
                data: { axis },
              },
            ],
    ),
};
