import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const directionIndicatorDrifts: Rule = {
  code: 'DIRECTION_INDICATOR_DRIFTS',
  severity: 'caution',
  meaning: 'The direction indicator drifts more than its maker allows',
  remedy: phrase`Have it looked at`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const indicator = visit.compass?.directionIndicator;
    if (!indicator?.limitDegPer15Min || isAtMost(Math.abs(indicator.driftDegPer15Min), indicator.limitDegPer15Min))
      return [];
    return [
      {
        path: ['compass', 'directionIndicator', 'driftDegPer15Min'],
        sentence: say.words`The direction indicator drifts ${say.plain(indicator.driftDegPer15Min, 1)}° in a quarter of an hour; its limit is ${say.plain(indicator.limitDegPer15Min, 1)}°`,
      },
    ];
  },
};
