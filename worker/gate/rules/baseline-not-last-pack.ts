import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const baselineNotLastPack: Rule = {
  code: 'BASELINE_NOT_LAST_PACK',
  severity: 'blocks',
  meaning: 'The baseline is not the last pack sealed for this aircraft',
  remedy: phrase`Carry the figures forward from that pack`,
  source: PRACTICE,
  check: ({ visit, facts, say }) => {
    const { lastPack } = facts;
    const { baseline } = visit;
    if (!lastPack || !baseline || baseline.reference === lastPack.pack) return [];
    return [
      {
        path: ['baseline', 'reference'],
        sentence: say.words`The last pack sealed for this aircraft is ${lastPack.pack}; the baseline is ${baseline.reference}`,
        data: { lastPack: lastPack.pack },
      },
    ];
  },
};
