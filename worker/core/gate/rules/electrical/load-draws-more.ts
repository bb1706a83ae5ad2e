import { currentA } from '../../../calc/electrical/load.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import { PHASES } from '../../../record/electrical.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const loadDrawsMore: Rule = {
  code: 'LOAD_DRAWS_MORE',
  severity: 'caution',
  meaning: 'A load draws more current than the load analysis counts in any phase',
  remedy: m.loadDrawsMore_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['electrical', 'loads'], visit.electrical?.loads, (load) => {
      const { name, measuredA = 0, change } = load;
      if (change === 'removed') return undefined;
      const countedA = Math.max(...PHASES.map((phase) => currentA(load, phase, visit.electrical?.system ?? '14-volt')));
      if (isAtMost(measuredA, countedA)) return undefined;
      const [measuredText, countedText] = figure.plainApart(measuredA, countedA, 2);
      return {
        field: 'measuredA',
        sentence: said(m.loadDrawsMore_loadMeasuredMostCounted, {
          name,
          measured: measuredText,
          counted: countedText,
        }),
        data: { measuredA, countedA },
      };
    }),
};
