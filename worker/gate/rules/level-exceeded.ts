import { printNumber } from '../../units/rounding.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const levelExceeded: Rule = {
  code: 'LEVEL_EXCEEDED',
  severity: 'blocks',
  meaning: 'The aircraft was not level when weighed',
  remedy: 'Level it and weigh again',
  source: PRACTICE,
  check: ({ visit, regime }) => {
    const level = visit.weighing?.level;
    if (!level) return [];
    const limit = regime.levelToleranceDeg.value;
    return (['longitudinalDeg', 'lateralDeg'] as const).flatMap((axis): Hit[] => {
      if (Math.abs(level[axis]) <= limit) return [];
      return [
        {
          path: ['weighing', 'level', axis],
          sentence: `Attitude ${printNumber(level[axis], 1)}° from level; the limit is ${printNumber(limit, 1)}°`,
          data: { angleDeg: level[axis], limitDeg: limit },
        },
      ];
    });
  },
};
