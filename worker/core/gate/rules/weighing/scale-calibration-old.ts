import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { addMonths, dateOf } from '../../../units/calendar.ts';
import { CALIBRATION_SOURCE, CALIBRATION_YEARS } from '../../calibration-years.ts';
import { hitsIn } from '../../hits.ts';
import type { Rule } from '../../rule.ts';

export const scaleCalibrationOld: Rule = {
  code: 'SCALE_CALIBRATION_OLD',
  severity: 'caution',
  meaning: 'A scale was calibrated more than two years before the weighing, or nobody recorded when',
  remedy: m.scaleCalibrationOld_remedy,
  source: CALIBRATION_SOURCE,
  check: ({ visit: { weighing } }) => {
    if (!weighing) return undefined;
    const on = dateOf(weighing.weighedAt);
    return hitsIn(['weighing', 'scales'], weighing.scales, ({ id, calibratedOn }) => {
      const field = 'calibratedOn';
      if (calibratedOn === undefined)
        return { field, sentence: said(m.scaleCalibrationOld_unstated, { id }), data: { scale: id } };
      if (addMonths(calibratedOn, 12 * CALIBRATION_YEARS) >= on) return undefined;
      return {
        field,
        sentence: said(m.scaleCalibrationOld_old, {
          id,
          calibratedOn: figure.date(calibratedOn),
          on: figure.date(on),
          years: CALIBRATION_YEARS,
        }),
        data: { scale: id, calibratedOn, weighedOn: on },
      };
    });
  },
};
