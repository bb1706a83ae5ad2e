import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const levelExceeded: Rule = {
  code: 'LEVEL_EXCEEDED',
  severity: 'blocks',
  meaning: 'The aircraft was not level when weighed',
  remedy: phrase`Level it and weigh again`,
  source: PRACTICE,
  check: ({ visit, regime, say }) => {
    const level = visit.weighing?.level;
    if (!level) return [];
    const limit = regime.levelToleranceDeg.value;
    return (['longitudinalDeg', 'lateralDeg'] as const).flatMap((axis): Hit[] => {
      if (isAtMost(Math.abs(level[axis]), limit)) return [];
      const [angleText, limitText] = say.plainApart(level[axis], limit, 1);
      return [
        {
          path: ['weighing', 'level', axis],
          sentence: say.words`Attitude ${angleText}° from level; the limit is ${limitText}°`,
          data: { angleDeg: level[axis], limitDeg: limit },
        },
      ];
    });
  },
};
