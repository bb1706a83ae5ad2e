import { currentA } from '../../calc/electrical/load.ts';
import { isAtMost } from '../../calc/limit-met.ts';
import { PHASES } from '../../visit/electrical.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const loadDrawsMore: Rule = {
  code: 'LOAD_DRAWS_MORE',
  severity: 'caution',
  meaning: 'A load was measured to draw more than the load analysis counts in any phase',
  remedy: phrase`Compute with the current that was measured, or find out why it is so high`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.electrical?.loads ?? []).flatMap((load, index): Hit[] => {
      const { name, measuredA = 0, change } = load;
      if (change === 'removed') return [];
      const countedA = Math.max(...PHASES.map((phase) => currentA(load, phase, visit.electrical?.system ?? '14-volt')));
      if (isAtMost(measuredA, countedA)) return [];
      const [measuredText, countedText] = say.plainApart(measuredA, countedA, 2);
      return [
        {
          path: ['electrical', 'loads', index, 'measuredA'],
          sentence: say.words`Load ${name}: ${measuredText} A were measured; at most ${countedText} A are counted`,
          data: { measuredA, countedA },
        },
      ];
    }),
};
