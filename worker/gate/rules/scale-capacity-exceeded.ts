import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const scaleCapacityExceeded: Rule = {
  code: 'SCALE_CAPACITY_EXCEEDED',
  severity: 'caution',
  meaning: 'A reading is beyond the capacity of its scale',
  remedy: phrase`Weigh that point on a larger scale`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.weighing?.points ?? []).flatMap((point, index) =>
      point.readingsKg.flatMap((readingKg, run): Hit[] => {
        const capacityKg = visit.weighing?.scales.find(({ id }) => id === point.scale)?.capacityKg;
        if (capacityKg === undefined || isAtMost(readingKg, capacityKg)) return [];
        const [readingText, capacityText] = say.apart('mass', readingKg, capacityKg);
        return [
          {
            path: ['weighing', 'points', index, 'readings', run],
            sentence: say.words`${point.name}: a reading of ${readingText} is beyond the capacity of scale ${point.scale}, ${capacityText}`,
            data: { readingKg, capacityKg },
          },
        ];
      }),
    ),
};
