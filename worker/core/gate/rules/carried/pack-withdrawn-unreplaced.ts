import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const packWithdrawnUnreplaced: Rule = {
  code: 'PACK_WITHDRAWN_UNREPLACED',
  severity: 'caution',
  meaning: 'An earlier pack was withdrawn and not replaced; its work is in no current pack',
  remedy: m.packWithdrawnUnreplaced_remedy,
  source: PRACTICE,
  check: ({ facts }) =>
    (facts.withdrawnPacks ?? []).map((pack) => ({
      path: '/visit',
      sentence: said(m.packWithdrawnUnreplaced_withdrawnNotReplaced, { pack }),
      data: { pack },
    })),
};
