import { printNumber } from '../../units/rounding.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const directionIndicatorDrifts: Rule = {
  code: 'DIRECTION_INDICATOR_DRIFTS',
  severity: 'caution',
  meaning: 'The direction indicator drifts more than its maker allows',
  remedy: 'Have it looked at',
  source: PRACTICE,
  check: ({ visit }) => {
    const indicator = visit.compass?.directionIndicator;
    if (!indicator?.limitDegPer15Min || Math.abs(indicator.driftDegPer15Min) <= indicator.limitDegPer15Min) return [];
    return [
      {
        path: ['compass', 'directionIndicator', 'driftDegPer15Min'],
        sentence: `The direction indicator drifts ${printNumber(indicator.driftDegPer15Min, 1)}° in a quarter of an hour; its limit is ${printNumber(indicator.limitDegPer15Min, 1)}°`,
      },
    ];
  },
};
