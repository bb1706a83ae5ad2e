import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';
import { wireKey, wireName } from '../../wire-name.ts';

export const shieldUnterminated: Rule = {
  code: 'SHIELD_UNTERMINATED',
  severity: 'caution',
  meaning: 'The screen of a wire is grounded at neither end',
  remedy: m.shieldUnterminated_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.wiring?.wires ?? []).flatMap((wire, index): Hit[] => {
      if (wire.change === 'removed' || wire.shield !== 'open') return [];
      return [
        {
          path: ['wiring', 'wires', index, 'shield'],
          sentence: said(m.shieldUnterminated_screenWireGroundedNeither, { wire: wireName(wire) }),
          data: { wire: wireKey(wire) },
        },
      ];
    }),
};
