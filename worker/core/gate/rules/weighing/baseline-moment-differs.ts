import { cgMm, hasMass } from '../../../calc/mass/mass-moment.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** More than half a tenth of an inch, and moments printed in thousands, can explain together. */
const ROUNDING_MM = 3;
/** An arm this small has no sign to speak of. */
const NO_SIGN_MM = 0.5;

const AXES = [
  { field: 'emptyMoment', arm: 'emptyArmMm', moment: 'emptyMomentKgMm' },
  { field: 'emptyLateralMoment', arm: 'emptyLateralArmMm', moment: 'emptyLateralMomentKgMm' },
] as const;

export const baselineMomentDiffers: Rule = {
  code: 'BASELINE_MOMENT_DIFFERS',
  severity: 'blocks',
  meaning: 'Mass times arm of the baseline differs from its moment, e.g. because a sign was left out',
  remedy: m.baselineMomentDiffers_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hits(AXES, ({ field, arm, moment }) => {
      const { baseline } = visit;
      const [armMm, momentKgMm] = [baseline?.[arm], baseline?.[moment]];
      if (!baseline || armMm === undefined || momentKgMm === undefined) return undefined;
      const fromMoment = { massKg: baseline.emptyMassKg, momentKgMm };
      // EMPTY_MASS_NOT_POSITIVE covers this case.
      if (!hasMass(fromMoment)) return undefined;
      const fromMomentMm = cgMm(fromMoment);
      const isOtherSide = fromMomentMm * armMm < 0 && Math.min(Math.abs(fromMomentMm), Math.abs(armMm)) > NO_SIGN_MM;
      if (Math.abs(fromMomentMm - armMm) <= ROUNDING_MM && !isOtherSide) return undefined;
      return {
        path: ['baseline', field],
        sentence: said(m.baselineMomentDiffers_armAndMoment, {
          arm: figure.measure('arm', armMm),
          fromMoment: figure.measure('arm', fromMomentMm),
        }),
        data: { armMm, fromMomentMm },
      };
    }),
};
