import { sharedX } from '../../../calc/numbers/interpolate.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const scaleCorrectionsAmbiguous: Rule = {
  code: 'SCALE_CORRECTIONS_AMBIGUOUS',
  severity: 'blocks',
  meaning: 'A scale has two corrections for one reading, so neither can be applied',
  remedy: m.scaleCorrectionsAmbiguous_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['weighing', 'scales'], visit.weighing?.scales, ({ id, corrections = [] }) => {
      const readingKg = sharedX(corrections, (row) => row.readingKg);
      if (readingKg === undefined) return undefined;
      return {
        field: 'corrections',
        sentence: said(m.scaleCorrectionsAmbiguous_scaleTwoCorrectionsReading, {
          id,
          reading: figure.measure('mass', readingKg),
        }),
        data: { scale: id, readingKg },
      };
    }),
};
