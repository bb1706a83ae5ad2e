import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const scaleCalibrationExpired: Rule = {
  code: 'SCALE_CALIBRATION_EXPIRED',
  severity: 'blocks',
  meaning: 'The calibration of a scale was not valid on the day of the weighing',
  remedy: m.scaleCalibrationExpired_remedy,
  source: read('AC 43.13-1B 10-15e; ML.A.402(b)(4)'),
  check: ({ visit }) => {
    const { weighing } = visit;
    if (!weighing) return undefined;
    const on = dateOf(weighing.weighedAt);
    return hitsIn(['weighing', 'scales'], weighing.scales, ({ id, calibratedOn, calibrationDueOn }) => {
      if (calibratedOn !== undefined && calibratedOn > on)
        return {
          field: 'calibratedOn',
          sentence: said(m.scaleCalibrationExpired_scaleCalibratedAfterWeighing, {
            id,
            calibratedOn: figure.date(calibratedOn),
            on: figure.date(on),
          }),
          data: { scale: id },
        };
      if (calibrationDueOn >= on) return undefined;
      return {
        field: 'calibrationDueOn',
        sentence: said(m.scaleCalibrationExpired_calibrationScaleRanOut, {
          id,
          calibrationDueOn: figure.date(calibrationDueOn),
          on: figure.date(on),
        }),
        data: { scale: id, calibrationDueOn, weighedOn: on },
      };
    });
  },
};
