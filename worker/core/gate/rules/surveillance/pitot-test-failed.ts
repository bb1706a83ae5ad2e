import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { figureName } from '../../figure-name.ts';
import { hits } from '../../hits.ts';
import { rangeText, valueOutside } from '../../range-text.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { ofTested } from '../../tested-name.ts';

export const pitotTestFailed: Rule = {
  code: 'PITOT_TEST_FAILED',
  severity: 'blocks',
  meaning: 'The pitot system leaks more than its limit, or the airspeed indication is outside its allowed error',
  remedy: m.pitotTestFailed_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hits(results.surveillance?.pitotSystems, ({ figures }, index) =>
      hits(figures, (measured) => {
        if (measured.isWithin) return undefined;
        return {
          path: ['surveillance', 'pitotSystems', index],
          sentence: said(m.outsideLimits, {
            figure: ofTested(visit.surveillance?.pitotSystems?.[index], figureName(measured)),
            value: valueOutside(measured, 1),
            unit: measured.unit,
            range: rangeText(measured),
          }),
          data: { value: measured.value },
        };
      }),
    ),
};
