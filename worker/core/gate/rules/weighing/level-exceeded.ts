import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const levelExceeded: Rule = {
  code: 'LEVEL_EXCEEDED',
  severity: 'blocks',
  meaning: 'The aircraft was not in its attitude for weighing',
  remedy: m.levelExceeded_remedy,
  source: PRACTICE,
  values: ['levelToleranceDeg'],
  check: ({ visit, regime }) => {
    const level = visit.weighing?.level;
    if (!level) return undefined;
    const { levelAttitude } = visit.aircraft;
    const limit = levelAttitude?.toleranceDeg ?? regime.levelToleranceDeg.value;
    return hits(['longitudinalDeg', 'lateralDeg'] as const, (axis) => {
      const offDeg = level[axis] - (levelAttitude?.[axis] ?? 0);
      if (isAtMost(Math.abs(offDeg), limit)) return undefined;
      const [angleText, limitText] = figure.plainApart(offDeg, limit, 1);
      return {
        path: ['weighing', 'level', axis],
        sentence: said(m.levelExceeded_attitudeLevelLimit, { angle: angleText, limit: limitText }),
        data: { angleDeg: offDeg, limitDeg: limit },
      };
    });
  },
};
