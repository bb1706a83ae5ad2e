import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { valueOutside } from '../../range-text.ts';
import { type Rule, read } from '../../rule.ts';

export const hangAngleOutside: Rule = {
  code: 'HANG_ANGLE_OUTSIDE',
  severity: 'blocks',
  meaning: 'The aircraft hangs at an angle outside the permitted band',
  remedy: m.hangAngleOutside_remedy,
  source: read('FAA-H-8083-21 (hang test)'),
  check: ({ visit }) => {
    const { hangBolt } = visit.aircraft;
    if (!hangBolt) return undefined;
    const { minimumDeg, maximumDeg } = hangBolt;
    return hitsIn(['weighing', 'hangTests'], visit.weighing?.hangTests, ({ state, angleDeg }) => {
      if (isAtLeast(angleDeg, minimumDeg) && isAtMost(angleDeg, maximumDeg)) return undefined;
      return {
        field: 'angleDeg',
        sentence: said(m.hangAngleOutside_hangsAt, {
          state,
          angle: valueOutside({ value: angleDeg, least: minimumDeg, most: maximumDeg }, 1),
          minimum: figure.asIs(minimumDeg),
          maximum: figure.asIs(maximumDeg),
        }),
        data: { angleDeg, minimumDeg, maximumDeg },
      };
    });
  },
};
