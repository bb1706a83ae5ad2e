import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Air temperature and pressure move every reading by this much from one day to another. */
const NOTICED_SHARE = 0.15;

export const engineChanged: Rule = {
  code: 'ENGINE_CHANGED',
  severity: 'caution',
  meaning: 'An engine reading changed by more than the measurement explains',
  remedy: m.engineChanged_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.engineRuns, ({ name, unit, before, after, change, isChanged, isWithin }) => {
      const share = change !== undefined && before ? Math.abs(change / before) : 0;
      if (!isChanged || !isWithin || isAtMost(share, NOTICED_SHARE) || before === undefined || after === undefined)
        return undefined;
      return {
        path: ['engineRuns'],
        sentence: said(m.engineChanged_beforeAfterWork, {
          name,
          before: figure.asIs(before),
          unit,
          after: figure.asIs(after),
          unit2: unit,
        }),
        data: { name, change: change ?? 0 },
      };
    }),
};
