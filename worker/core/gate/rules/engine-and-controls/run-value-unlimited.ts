import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const runValueUnlimited: Rule = {
  code: 'RUN_VALUE_UNLIMITED',
  severity: 'caution',
  meaning: 'Engine readings after the work have no limits',
  remedy: m.runValueUnlimited_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['engineRuns'], visit.engineRuns, ({ when, values }) => {
      const free = values.filter(({ least, most }) => least === undefined && most === undefined);
      if (when !== 'after' || free.length === 0) return undefined;
      return {
        field: 'values',
        sentence: said(m.runValueUnlimited_noLimits, { names: list(free.map(({ name }) => name)) }),
        data: { count: free.length },
      };
    }),
};
