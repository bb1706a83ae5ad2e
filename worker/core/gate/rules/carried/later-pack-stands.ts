import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const laterPackStands: Rule = {
  code: 'LATER_PACK_STANDS',
  severity: 'caution',
  meaning: 'A pack is corrected after a later one was released with the old figures',
  remedy: m.laterPackStands_remedy,
  source: PRACTICE,
  check: ({ facts }) =>
    (facts.laterPacks ?? []).map((pack) => ({
      path: '/visit',
      sentence: said(m.laterPackStands_releasedAfterVisitNot, { pack }),
      data: { pack },
    })),
};
