import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const standingFileUnproved: Rule = {
  code: 'STANDING_FILE_UNPROVED',
  severity: 'blocks',
  meaning: 'The record has parts of a standing file that no pack of this workshop and no proof shows',
  remedy: m.standingFileUnproved_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) => {
    // Only an archive can know its packs.
    if (!visit.standing || !facts.laterPacks || facts.standing) return undefined;
    const { pack } = visit.standing;
    return { path: ['standing'], sentence: said(m.standingFileUnproved_notKnown, { pack }), data: { named: pack } };
  },
};
