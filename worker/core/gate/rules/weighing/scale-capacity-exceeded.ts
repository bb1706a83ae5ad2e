import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import { scaleOf } from '../../../calc/weighing/weighing.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const scaleCapacityExceeded: Rule = {
  code: 'SCALE_CAPACITY_EXCEEDED',
  severity: 'blocks',
  meaning: 'A reading is beyond the capacity of its scale',
  remedy: m.scaleCapacityExceeded_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['weighing', 'points'], visit.weighing?.points, (point) => {
      const capacityKg = visit.weighing && scaleOf(visit.weighing, point)?.capacityKg;
      return hits(point.readingsKg, (readingKg, run) => {
        if (capacityKg === undefined || isAtMost(readingKg, capacityKg)) return undefined;
        const [readingText, capacityText] = figure.apart('mass', readingKg, capacityKg);
        return {
          field: ['readings', run],
          sentence: said(m.scaleCapacityExceeded_readingBeyondCapacityScale, {
            point: point.name,
            reading: readingText,
            scale: point.scale,
            capacity: capacityText,
          }),
          data: { readingKg, capacityKg },
        };
      });
    }),
};
