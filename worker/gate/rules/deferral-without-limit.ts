import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const deferralWithoutLimit: Rule = {
  code: 'DEFERRAL_WITHOUT_LIMIT',
  severity: 'blocks',
  meaning: 'A deferred item has no limit in time or hours',
  remedy: phrase`Give the date or hours by which it must be done`,
  source: read('ML.A.403; 14 CFR 43.11'),
  check: ({ visit, say }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, deferral }, index): Hit[] => {
      if (
        disposition !== 'deferred' ||
        !deferral ||
        deferral.untilDate !== undefined ||
        deferral.untilHours !== undefined
      )
        return [];
      return [
        {
          path: ['findings', index, 'deferral'],
          sentence: say.words`Finding ${id} is deferred without a date or hours by which it must be done`,
          data: { finding: id },
        },
      ];
    }),
};
