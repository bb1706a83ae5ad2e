import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { figureName } from '../../figure-name.ts';
import { hits } from '../../hits.ts';
import { rangeText, valueOutside } from '../../range-text.ts';
import { type Rule, read } from '../../rule.ts';
import { ofTested } from '../../tested-name.ts';

export const altimeterTestFailed: Rule = {
  code: 'ALTIMETER_TEST_FAILED',
  severity: 'blocks',
  meaning: 'A figure of the altimeter test is outside its limits',
  remedy: m.altimeterTestFailed_remedy,
  source: read('14 CFR 43 Appendix E'),
  check: ({ visit, results }) =>
    hits(results.surveillance?.altimeters, ({ figures }, index) =>
      hits(figures, (measured) => {
        if (measured.isWithin) return undefined;
        return {
          path: ['surveillance', 'altimeters', index],
          sentence: said(m.outsideLimits, {
            figure: ofTested(visit.surveillance?.altimeters?.[index], figureName(measured)),
            value: valueOutside(measured, Number.isInteger(measured.value) ? 0 : 1),
            unit: measured.unit,
            range: rangeText(measured),
          }),
          data: { value: measured.value },
        };
      }),
    ),
};
