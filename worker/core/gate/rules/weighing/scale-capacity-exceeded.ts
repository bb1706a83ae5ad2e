import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const scaleCapacityExceeded: Rule = {
  code: 'SCALE_CAPACITY_EXCEEDED',
  severity: 'caution',
  meaning: 'A reading is beyond the capacity of its scale',
  remedy: m.scaleCapacityExceeded_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.weighing?.points ?? []).flatMap((point, index) =>
      point.readingsKg.flatMap((readingKg, run): Hit[] => {
        const capacityKg = visit.weighing?.scales.find(({ id }) => id === point.scale)?.capacityKg;
        if (capacityKg === undefined || isAtMost(readingKg, capacityKg)) return [];
        const [readingText, capacityText] = figure.apart('mass', readingKg, capacityKg);
        return [
          {
            path: ['weighing', 'points', index, 'readings', run],
            sentence: said(m.scaleCapacityExceeded_readingBeyondCapacityScale, {
              point: point.name,
              reading: readingText,
              scale: point.scale,
              capacity: capacityText,
            }),
            data: { readingKg, capacityKg },
          },
        ];
      }),
    ),
};
