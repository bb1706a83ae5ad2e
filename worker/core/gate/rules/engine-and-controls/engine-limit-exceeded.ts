import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { rangeText } from '../../range-text.ts';
import { type Rule, read } from '../../rule.ts';

export const engineLimitExceeded: Rule = {
  code: 'ENGINE_LIMIT_EXCEEDED',
  severity: 'blocks',
  meaning: 'An engine reading was outside its limits after the work',
  remedy: m.engineLimitExceeded_remedy,
  source: read('14 CFR 43.15(c); limits from the record'),
  check: ({ results }) =>
    hits(results.engineRuns, ({ name, unit, after, least, most, isWithin }) => {
      if (isWithin || after === undefined) return undefined;
      return {
        path: ['engineRuns'],
        sentence: said(m.outsideLimits, {
          figure: name,
          value: figure.asIs(after),
          unit,
          range: rangeText({ least, most }),
        }),
        data: { name, after },
      };
    }),
};
