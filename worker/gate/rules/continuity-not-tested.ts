import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';
import { wireName } from '../wire-name.ts';

export const continuityNotTested: Rule = {
  code: 'CONTINUITY_NOT_TESTED',
  severity: 'blocks',
  meaning: 'A wire put in by this visit was not tested end to end, or failed',
  remedy: phrase`Test continuity from end to end and enter the result`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const wiring = visit.wiring;
    return (wiring?.wires ?? []).flatMap((wire, index): Hit[] => {
      if (wire.change !== 'added' || (wire.continuity === 'passed' && wiring?.test)) return [];
      return [
        {
          path: ['wiring', 'wires', index, 'continuity'],
          sentence:
            wire.continuity === 'failed'
              ? say.words`Wire ${wireName(wire, say)} failed the continuity test`
              : say.words`The continuity of wire ${wireName(wire, say)} was not tested`,
          data: { wire: wireName(wire, say) },
        },
      ];
    });
  },
};
