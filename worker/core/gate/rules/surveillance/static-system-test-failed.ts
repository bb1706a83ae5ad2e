import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { checkName } from '../../check-name.ts';
import { figureInSentence } from '../../figure-name.ts';
import { rangeText } from '../../range-text.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

const PATH = ['surveillance', 'staticSystem'];

export const staticSystemTestFailed: Rule = {
  code: 'STATIC_SYSTEM_TEST_FAILED',
  severity: 'blocks',
  meaning: 'The static pressure system leaks or is at fault, or it was tested at too little suction',
  remedy: m.staticSystemTestFailed_remedy,
  source: read('14 CFR 43 Appendix E (a); 14 CFR 23.1325(b)(2)(i) before 2017'),
  check: ({ results }) => {
    const { figures = [], checks = [] } = results.surveillance?.staticSystem ?? {};
    return [
      ...figures.flatMap((measured): Hit[] =>
        measured.isWithin
          ? []
          : [
              {
                path: PATH,
                sentence: said(m.staticSystemTestFailed_staticSystemOutsideLimits, {
                  figure: figureInSentence(measured.figure),
                  value: figure.plain(measured.value, 0),
                  unit: measured.unit,
                  range: rangeText(measured),
                }),
                data: { value: measured.value },
              },
            ],
      ),
      ...checks.flatMap((check): Hit[] =>
        check.outcome === 'failed'
          ? [
              {
                path: PATH,
                sentence: said(m.staticSystemTestFailed_staticSystemFailedCheck, {
                  paragraph: check.paragraph,
                  check: checkName(check),
                }),
                data: { check: check.check },
              },
            ]
          : [],
      ),
    ];
  },
};
