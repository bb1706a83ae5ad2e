import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { wireKey, wireName } from '../../wire-name.ts';

export const continuityNotTested: Rule = {
  code: 'CONTINUITY_NOT_TESTED',
  severity: 'blocks',
  meaning: 'The continuity of a new wire was not tested, or the test failed',
  remedy: m.continuityNotTested_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const wiring = visit.wiring;
    return hitsIn(['wiring', 'wires'], wiring?.wires, (wire) => {
      if (wire.change !== 'added' || (wire.continuity === 'passed' && wiring?.test)) return undefined;
      return {
        field: 'continuity',
        sentence:
          wire.continuity === 'failed'
            ? said(m.continuityNotTested_wireFailedContinuityTest, { wire: wireName(wire) })
            : said(m.continuityNotTested_continuityWireNotTested, { wire: wireName(wire) }),
        data: { wire: wireKey(wire) },
      };
    });
  },
};
