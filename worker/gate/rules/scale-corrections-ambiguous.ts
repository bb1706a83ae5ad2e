import { sharedX } from '../../calc/interpolate.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const scaleCorrectionsAmbiguous: Rule = {
  code: 'SCALE_CORRECTIONS_AMBIGUOUS',
  severity: 'blocks',
  meaning: 'A scale has two corrections for one reading, so that neither can be applied',
  remedy: phrase`Copy the corrections from the certificate again, each reading once`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.weighing?.scales ?? []).flatMap(({ id, corrections = [] }, index): Hit[] => {
      const readingKg = sharedX(corrections, (row) => row.readingKg);
      if (readingKg === undefined) return [];
      return [
        {
          path: ['weighing', 'scales', index, 'corrections'],
          sentence: say.words`Scale ${id}: two corrections for a reading of ${say.measure('mass', readingKg)}`,
          data: { scale: id, readingKg },
        },
      ];
    }),
};
