import { currentA } from '../../../calc/electrical/load.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import { PHASES } from '../../../record/electrical.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const loadDrawsMore: Rule = {
  code: 'LOAD_DRAWS_MORE',
  severity: 'caution',
  meaning: 'A load was measured to draw more than the load analysis counts in any phase',
  remedy: m.loadDrawsMore_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.electrical?.loads ?? []).flatMap((load, index): Hit[] => {
      const { name, measuredA = 0, change } = load;
      if (change === 'removed') return [];
      const countedA = Math.max(...PHASES.map((phase) => currentA(load, phase, visit.electrical?.system ?? '14-volt')));
      if (isAtMost(measuredA, countedA)) return [];
      const [measuredText, countedText] = figure.plainApart(measuredA, countedA, 2);
      return [
        {
          path: ['electrical', 'loads', index, 'measuredA'],
          sentence: said(m.loadDrawsMore_loadMeasuredMostCounted, {
            name,
            measured: measuredText,
            counted: countedText,
          }),
          data: { measuredA, countedA },
        },
      ];
    }),
};
