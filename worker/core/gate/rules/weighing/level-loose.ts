import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import { attitudeShift } from '../../../calc/weighing/attitude.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Usual tolerance fore and aft, if the manufacturer has none: it moves the centre of gravity. */
const TOLERANCE_DEG = 0.2;
/** Height of the centre of gravity above the points, if the record does not state it. */
const USUAL_HEIGHT_MM = 800;

export const levelLoose: Rule = {
  code: 'LEVEL_LOOSE',
  severity: 'caution',
  meaning: 'The aircraft was off its weighing attitude by more than 0.2°, and the manufacturer states no tolerance',
  remedy: m.levelLoose_remedy,
  source: PRACTICE,
  values: ['levelToleranceDeg'],
  check: ({ visit: { aircraft, weighing }, regime }) => {
    const { levelAttitude } = aircraft;
    if (!weighing?.level || levelAttitude?.toleranceDeg !== undefined) return undefined;
    const offDeg = weighing.level.longitudinalDeg - (levelAttitude?.longitudinalDeg ?? 0);
    const size = Math.abs(offDeg);
    // LEVEL_EXCEEDED covers more.
    if (isAtMost(size, TOLERANCE_DEG) || !isAtMost(size, regime.levelToleranceDeg.value)) return undefined;
    const heightMm = Math.abs(weighing.cgHeightMm ?? USUAL_HEIGHT_MM);
    const { shiftMm } = attitudeShift({ heightMm, errorDeg: size });
    const [angle, limit] = figure.plainApart(offDeg, TOLERANCE_DEG, 2);
    return {
      path: ['weighing', 'level', 'longitudinalDeg'],
      sentence: said(m.levelLoose_off, {
        angle,
        limit,
        shift: figure.measure('arm', Math.abs(shiftMm)),
        height: figure.measure('arm', heightMm),
      }),
      data: { angleDeg: offDeg, limitDeg: TOLERANCE_DEG, shiftMm: Math.abs(shiftMm) },
    };
  },
};
