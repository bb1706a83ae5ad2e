import * as figure from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import { said } from '../../text/message.ts';
import { CHECK_NAMES, checkName } from '../check-name.ts';
import { nameOfFigure } from '../figure-name.ts';
import { rangeText } from '../range-text.ts';
import { type Hit, type Rule, read } from '../rule.ts';

const PATH = ['surveillance', 'transponderTest'];

export const transponderTestFailed: Rule = {
  code: 'TRANSPONDER_TEST_FAILED',
  severity: 'blocks',
  meaning: 'A figure of the transponder test is outside its limits, or the transponder answers wrongly',
  remedy: m.transponderTestFailed_remedy,
  source: read('14 CFR 43 Appendix F'),
  check: ({ results, say }) => {
    const { transponder = [], modeS = [] } = results.surveillance ?? {};
    return [
      ...transponder.flatMap((figure): Hit[] =>
        figure.isWithin
          ? []
          : [
              {
                path: PATH,
                sentence: said(m.transponderTestFailed_outsideLimits, {
                  nameOfFigure: nameOfFigure(figure.figure, say),
                  figure: figure.plain(figure.value, 1),
                  unit: figure.unit,
                  figure2: rangeText(figure, say),
                }),
                data: { value: figure.value },
              },
            ],
      ),
      ...modeS.flatMap((check): Hit[] =>
        check.outcome === 'failed'
          ? [
              {
                path: PATH,
                sentence: said(m.transponderTestFailed_transponderFailedCheckMode, {
                  paragraph: check.paragraph,
                  check: checkName(check, say),
                }),
                data: { name: CHECK_NAMES[check.check], check: check.check },
              },
            ]
          : [],
      ),
    ];
  },
};
