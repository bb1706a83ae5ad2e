import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { wireKey, wireName } from '../../wire-name.ts';

export const shieldUnterminated: Rule = {
  code: 'SHIELD_UNTERMINATED',
  severity: 'caution',
  meaning: 'The screen of a wire is not grounded at either end',
  remedy: m.shieldUnterminated_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['wiring', 'wires'], visit.wiring?.wires, (wire) => {
      if (wire.change === 'removed' || wire.shield !== 'open') return undefined;
      return {
        field: 'shield',
        sentence: said(m.shieldUnterminated_screenWireGroundedNeither, { wire: wireName(wire) }),
        data: { wire: wireKey(wire) },
      };
    }),
};
