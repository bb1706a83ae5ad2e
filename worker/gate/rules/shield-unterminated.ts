import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';
import { wireName } from '../wire-name.ts';

export const shieldUnterminated: Rule = {
  code: 'SHIELD_UNTERMINATED',
  severity: 'caution',
  meaning: 'The screen of a wire is grounded at neither end',
  remedy: phrase`Ground it as the installation manual says`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.wiring?.wires ?? []).flatMap((wire, index): Hit[] => {
      if (wire.change === 'removed' || wire.shield !== 'open') return [];
      return [
        {
          path: ['wiring', 'wires', index, 'shield'],
          sentence: say.words`The screen of wire ${wireName(wire, say)} is grounded at neither end`,
          data: { wire: wireName(wire, say) },
        },
      ];
    }),
};
