import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';
import { wireKey, wireName } from '../../wire-name.ts';

export const continuityNotTested: Rule = {
  code: 'CONTINUITY_NOT_TESTED',
  severity: 'blocks',
  meaning: 'A wire put in by this visit was not tested end to end, or failed',
  remedy: m.continuityNotTested_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const wiring = visit.wiring;
    return (wiring?.wires ?? []).flatMap((wire, index): Hit[] => {
      if (wire.change !== 'added' || (wire.continuity === 'passed' && wiring?.test)) return [];
      return [
        {
          path: ['wiring', 'wires', index, 'continuity'],
          sentence:
            wire.continuity === 'failed'
              ? said(m.continuityNotTested_wireFailedContinuityTest, { wire: wireName(wire) })
              : said(m.continuityNotTested_continuityWireNotTested, { wire: wireName(wire) }),
          data: { wire: wireKey(wire) },
        },
      ];
    });
  },
};
