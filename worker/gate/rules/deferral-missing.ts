import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const deferralMissing: Rule = {
  code: 'DEFERRAL_MISSING',
  severity: 'blocks',
  meaning: 'A finding is deferred, but nothing says by whom and why',
  remedy: phrase`Fill in the deferral`,
  source: read('ML.A.403; 14 CFR 43.11'),
  check: ({ visit, say }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, deferral }, index): Hit[] =>
      disposition === 'deferred' && !deferral
        ? [
            {
              path: ['findings', index, 'deferral'],
              sentence: say.words`Finding ${id} is deferred, but nothing says by whom and why`,
              data: { finding: id },
            },
          ]
        : [],
    ),
};
