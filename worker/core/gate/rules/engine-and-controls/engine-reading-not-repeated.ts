import { lastRun } from '../../../calc/engine/engine-runs.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const engineReadingNotRepeated: Rule = {
  code: 'ENGINE_READING_NOT_REPEATED',
  severity: 'caution',
  meaning: 'An engine reading was taken only before or only after the work, or in another unit',
  remedy: m.engineReadingNotRepeated_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const last = lastRun(visit.engineRuns ?? [], 'after');
    if (!last) return undefined;
    const earlier = (visit.engineRuns ?? []).filter(({ when }) => when === 'before');
    const hasBefore = earlier.length > 0;
    const readBefore = new Set(earlier.flatMap(({ values }) => values.map(({ name }) => name)));
    return hits(results.engineRuns, ({ name, unit, before, after }) => {
      const isUnread = !readBefore.has(name) && before === undefined && after !== undefined;
      if (hasBefore && isUnread)
        return {
          path: ['engineRuns', last.index, 'values'],
          sentence: said(m.engineReadingNotRepeated_afterOnly, { name, after: figure.asIs(after), unit }),
          data: { name, after },
        };
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
