import { lastRun } from '../../../calc/engine/engine-runs.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const engineReadingNotRepeated: Rule = {
  code: 'ENGINE_READING_NOT_REPEATED',
  severity: 'caution',
  meaning: 'An engine reading from before the work was not repeated after it, or in another unit',
  remedy: m.engineReadingNotRepeated_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const last = lastRun(visit.engineRuns ?? [], 'after');
    if (!last) return undefined;
    return hits(results.engineRuns, ({ name, unit, before, after }) => {
      if (before === undefined || after !== undefined) return undefined;
      return {
        path: ['engineRuns', last.index, 'values'],
        sentence: said(m.engineReadingNotRepeated_beforeWorkNotRead, {
          name,
          before: figure.asIs(before),
          unit,
          unit2: unit,
        }),
        data: { name, before },
      };
    });
  },
};
