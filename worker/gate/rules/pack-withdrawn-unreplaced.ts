import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const packWithdrawnUnreplaced: Rule = {
  code: 'PACK_WITHDRAWN_UNREPLACED',
  severity: 'caution',
  meaning: 'A pack of before this visit was withdrawn and not replaced: what was done then is in no pack that stands',
  remedy: phrase`Issue that pack anew, or see that this record holds all that was changed then`,
  source: PRACTICE,
  check: ({ facts, say }) =>
    (facts.withdrawnPacks ?? []).map((pack) => ({
      path: '/visit',
      sentence: say.words`${pack} was withdrawn and not replaced`,
      data: { pack },
    })),
};
