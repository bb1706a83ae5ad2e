import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const deferralRepeated: Rule = {
  code: 'DEFERRAL_REPEATED',
  severity: 'caution',
  meaning: 'A finding has been carried forward more than once or twice',
  remedy: phrase`Rectify it, or say why it may wait again`,
  source: read('AMC on defects (original date kept)'),
  check: ({ visit, regime, say }) =>
    (visit.findings ?? []).flatMap(({ id, deferral }, index): Hit[] => {
      const times = deferral?.timesCarried ?? 0;
      if (times <= regime.deferralsCarried.value) return [];
      return [
        {
          path: ['findings', index, 'deferral', 'timesCarried'],
          sentence: say.words`Finding ${id} has been carried forward ${times} times`,
          data: { finding: id, times },
        },
      ];
    }),
};
