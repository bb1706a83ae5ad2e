import { meanOf } from '../../../calc/weighing/uncertainty.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Whether the third wheel is forward of the main wheels. */
const IS_FORWARD = new Map<string | undefined, boolean>([
  ['nose-wheel', true],
  ['tail-wheel', false],
]);

export const thirdPointOpposite: Rule = {
  code: 'THIRD_POINT_OPPOSITE',
  severity: 'caution',
  meaning: 'The third weighing point is on the wrong side of the main wheels for the undercarriage',
  remedy: m.thirdPointOpposite_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft, weighing } }) => {
    const { undercarriage } = aircraft;
    const isForward = IS_FORWARD.get(undercarriage);
    const sides = (weighing?.points ?? []).filter(({ side }) => side !== 'centre');
    if (isForward === undefined || undercarriage === undefined || sides.length < 2) return undefined;
    const mainsMm = meanOf(sides.map(({ armMm }) => armMm));
    return hitsIn(['weighing', 'points'], weighing?.points, ({ side, name, armMm }) =>
      side !== 'centre' || armMm < mainsMm === isForward
        ? undefined
        : {
            field: 'arm',
            sentence: said(isForward ? m.thirdPointOpposite_aft : m.thirdPointOpposite_forward, {
              name,
              arm: figure.measure('arm', armMm),
              mains: figure.measure('arm', mainsMm),
              undercarriage: termOf(undercarriage),
            }),
            data: { armMm, mainsMm, undercarriage },
          },
    );
  },
};
