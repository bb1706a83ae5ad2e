import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const standingKeyUnknown: Rule = {
  code: 'STANDING_KEY_UNKNOWN',
  severity: 'caution',
  meaning: 'Another workshop sealed the standing file, with a key that this service does not know',
  remedy: m.standingKeyUnknown_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) => {
    const { standingSealedBy: sealedBy } = facts;
    if (!visit.standing || !sealedBy || sealedBy.isKnown) return undefined;
    const { workshop, kid } = sealedBy;
    return {
      path: ['standing', 'proof'],
      sentence: said(m.standingKeyUnknown_sealed, { pack: visit.standing.pack, workshop, kid }),
      data: { workshop, kid },
    };
  },
};
