import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const leftRightUnequal: Rule = {
  code: 'LEFT_RIGHT_UNEQUAL',
  severity: 'caution',
  meaning: 'The main wheels carry unlike loads',
  remedy: phrase`Check level, tyres, fuel and the scales`,
  source: PRACTICE,
  check: ({ results, regime, say }) => {
    const sideKg = (side: 'left' | 'right'): number =>
      (results.weighing?.points ?? [])
        .filter((point) => point.side === side)
        .reduce((sum, { massKg }) => sum + massKg, 0);
    const [leftKg, rightKg] = [sideKg('left'), sideKg('right')];
    if (!(leftKg > 0 && rightKg > 0)) return [];
    const share = Math.abs(leftKg - rightKg) / (leftKg + rightKg);
    if (isAtMost(share, regime.leftRightShare.value)) return [];
    return [
      {
        path: ['weighing', 'points'],
        sentence: say.words`Left ${say.measure('mass', leftKg)} and right ${say.measure('mass', rightKg)} differ by ${say.plain(share * 100, 1)} % of their sum`,
        data: { leftKg, rightKg, share },
      },
    ];
  },
};
