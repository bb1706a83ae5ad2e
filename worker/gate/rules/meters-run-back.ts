import { printNumber } from '../../units/rounding.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const metersRunBack: Rule = {
  code: 'METERS_RUN_BACK',
  severity: 'blocks',
  meaning: 'A meter reads less at release than at arrival',
  remedy: 'Correct the reading',
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.meters?.readings ?? []).flatMap(({ id, inHours, outHours }, index): Hit[] => {
      if (outHours >= inHours) return [];
      return [
        {
          path: ['meters', 'readings', index, 'outHours'],
          sentence: `Meter ${id} read ${printNumber(inHours, 1)} h at arrival and ${printNumber(outHours, 1)} h at release`,
          data: { inHours, outHours },
        },
      ];
    }),
};
