import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PHASE_NAMES } from '../../phase-names.ts';
import { type Rule, read } from '../../rule.ts';

export const sourceOverloaded: Rule = {
  code: 'SOURCE_OVERLOADED',
  severity: 'blocks',
  meaning: 'The continuous load in a phase is more than the source capacity',
  remedy: m.sourceOverloaded_remedy,
  source: read('AC 43.13-1B 11-35: load within the capacity of the generator'),
  check: ({ results }) =>
    hits(results.electrical?.phases, ({ phase, continuousA, capacityA }) => {
      if (capacityA === undefined || isAtMost(continuousA, capacityA)) return undefined;
      const [loadText, capacityText] = figure.plainApart(continuousA, capacityA, 1);
      return {
        path: ['electrical', 'sources'],
        sentence: said(m.sourceOverloaded_continuousLoadSourcesGive, {
          phaseNames: said(PHASE_NAMES[phase]),
          load: loadText,
          capacity: capacityText,
        }),
        data: { phase, continuousA, capacityA },
      };
    }),
};
