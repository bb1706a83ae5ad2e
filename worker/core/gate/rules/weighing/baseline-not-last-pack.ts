import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const baselineNotLastPack: Rule = {
  code: 'BASELINE_NOT_LAST_PACK',
  severity: 'blocks',
  meaning: 'The baseline is not the last sealed pack of this aircraft',
  remedy: m.baselineNotLastPack_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) => {
    const { lastPack } = facts;
    const { baseline } = visit;
    if (!lastPack || !baseline || baseline.reference === lastPack.pack) return undefined;
    // The baseline of a standing file follows from it: STANDING_FILE_MOVED reports both.
    if (baseline.reference === visit.standing?.pack) return undefined;
    return {
      path: ['baseline', 'reference'],
      sentence: said(m.baselineNotLastPack_lastPackSealedAircraft, {
        pack: lastPack.pack,
        reference: baseline.reference,
      }),
      data: { lastPack: lastPack.pack },
    };
  },
};
