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
  meaning: 'A load draws more current than the load analysis counts, if continuous in each of its phases',
  remedy: m.loadDrawsMore_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['electrical', 'loads'], visit.electrical?.loads, (load) => {
      const { name, measuredA = 0, change, duty, amps, watts } = load;
      if (change === 'removed') return undefined;
      const counted = PHASES.filter((phase) => amps?.[phase] !== undefined || watts?.[phase] !== undefined).map(
        (phase) => currentA(load, phase, visit.electrical?.system ?? '14-volt'),
      );
      // What is always on draws the same in every phase.
      const isSteady = duty === 'continuous' && counted.length > 0;
      const countedA = isSteady ? Math.min(...counted) : Math.max(0, ...counted);
      if (isAtMost(measuredA, countedA)) return undefined;
      const [measuredText, countedText] = figure.plainApart(measuredA, countedA, 2);
      return {
        field: 'measuredA',
        sentence: said(isSteady ? m.loadDrawsMore_leastCounted : m.loadDrawsMore_loadMeasuredMostCounted, {
          name,
          measured: measuredText,
          counted: countedText,
        }),
        data: { measuredA, countedA },
      };
    }),
};
