import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const leftRightUnequal: Rule = {
  code: 'LEFT_RIGHT_UNEQUAL',
  severity: 'caution',
  meaning: 'The loads of the main wheels differ',
  remedy: m.leftRightUnequal_remedy,
  source: PRACTICE,
  values: ['leftRightShare'],
  check: ({ results, regime }) => {
    const sideKg = (side: 'left' | 'right'): number =>
      (results.weighing?.points ?? [])
        .filter((point) => point.side === side)
        .reduce((sum, { massKg }) => sum + massKg, 0);
    const [leftKg, rightKg] = [sideKg('left'), sideKg('right')];
    if (!(leftKg > 0 && rightKg > 0)) return undefined;
    const share = Math.abs(leftKg - rightKg) / (leftKg + rightKg);
    if (isAtMost(share, regime.leftRightShare.value)) return undefined;
    return {
      path: ['weighing', 'points'],
      sentence: said(m.leftRightUnequal_leftRightDifferTheir, {
        left: figure.measure('mass', leftKg),
        right: figure.measure('mass', rightKg),
        share: figure.plain(share * 100, 1),
      }),
      data: { leftKg, rightKg, share },
    };
  },
};
