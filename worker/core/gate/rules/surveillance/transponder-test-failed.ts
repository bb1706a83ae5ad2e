import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { checkName } from '../../check-name.ts';
import { nameOfFigure } from '../../figure-name.ts';
import { hits } from '../../hits.ts';
import { rangeText, valueOutside } from '../../range-text.ts';
import { type Rule, read } from '../../rule.ts';

const PATH = ['surveillance', 'transponderTest'];

export const transponderTestFailed: Rule = {
  code: 'TRANSPONDER_TEST_FAILED',
  severity: 'blocks',
  meaning: 'A figure of the transponder test is outside its limits, or a reply is wrong',
  remedy: m.transponderTestFailed_remedy,
  source: read('14 CFR 43 Appendix F'),
  check: ({ results }) => {
    const { transponder = [], modeS = [] } = results.surveillance ?? {};
    return [
      ...hits(transponder, (measured) => {
        if (measured.isWithin) return undefined;
        return {
          path: PATH,
          sentence: said(m.transponderTestFailed_outsideLimits, {
            figure: nameOfFigure(measured.figure),
            value: valueOutside(measured, 1),
            unit: measured.unit,
            range: rangeText(measured),
          }),
          data: { value: measured.value },
        };
      }),
      ...hits(modeS, (check) =>
        check.outcome === 'failed'
          ? {
              path: PATH,
              sentence: said(m.transponderTestFailed_transponderFailedCheckMode, {
                paragraph: check.paragraph,
                check: checkName(check),
              }),
              data: { check: check.check },
            }
          : undefined,
      ),
    ];
  },
};
