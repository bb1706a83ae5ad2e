import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const levelExceeded: Rule = {
  code: 'LEVEL_EXCEEDED',
  severity: 'blocks',
  meaning: 'The aircraft was not level when weighed',
  remedy: m.levelExceeded_remedy,
  source: PRACTICE,
  check: ({ visit, regime }) => {
    const level = visit.weighing?.level;
    if (!level) return undefined;
    const limit = regime.levelToleranceDeg.value;
    return hits(['longitudinalDeg', 'lateralDeg'] as const, (axis) => {
      if (isAtMost(Math.abs(level[axis]), limit)) return undefined;
      const [angleText, limitText] = figure.plainApart(level[axis], limit, 1);
      return {
        path: ['weighing', 'level', axis],
        sentence: said(m.levelExceeded_attitudeLevelLimit, { angle: angleText, limit: limitText }),
        data: { angleDeg: level[axis], limitDeg: limit },
      };
    });
  },
};
