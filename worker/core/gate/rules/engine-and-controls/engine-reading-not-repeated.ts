import { lastRun } from '../../../calc/engine/engine-runs.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const engineReadingNotRepeated: Rule = {
  code: 'ENGINE_READING_NOT_REPEATED',
  severity: 'caution',
  meaning:
    'An instrument was read in the last run before the work and not, or in another unit, in the last run after it',
  remedy: m.engineReadingNotRepeated_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const last = lastRun(visit.engineRuns ?? [], 'after');
    if (!last) return [];
    return results.engineRuns.flatMap(({ name, unit, before, after }): Hit[] =>
      before === undefined || after !== undefined
        ? []
        : [
            {
              path: ['engineRuns', last.index, 'values'],
              sentence: said(m.engineReadingNotRepeated_beforeWorkNotRead, {
                name,
                before: figure.asIs(before),
                unit,
                unit2: unit,
              }),
              data: { name, before },
            },
          ],
    );
  },
};
