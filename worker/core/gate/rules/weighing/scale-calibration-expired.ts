import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { type Hit, memory, type Rule } from '../../rule.ts';

export const scaleCalibrationExpired: Rule = {
  code: 'SCALE_CALIBRATION_EXPIRED',
  severity: 'blocks',
  meaning: 'The calibration of a scale did not hold on the day of the weighing',
  remedy: m.scaleCalibrationExpired_remedy,
  source: memory('ML.A.402 (calibrated tools)'),
  check: ({ visit }) => {
    const { weighing } = visit;
    if (!weighing) return [];
    const on = dateOf(weighing.weighedAt);
    return weighing.scales.flatMap(({ id, calibratedOn, calibrationDueOn }, index): Hit[] => {
      const path = ['weighing', 'scales', index];
      if (calibratedOn !== undefined && calibratedOn > on)
        return [
          {
            path: [...path, 'calibratedOn'],
            sentence: said(m.scaleCalibrationExpired_scaleCalibratedAfterWeighing, {
              id,
              calibratedOn: figure.date(calibratedOn),
              on: figure.date(on),
            }),
            data: { scale: id },
          },
        ];
      if (calibrationDueOn >= on) return [];
      return [
        {
          path: [...path, 'calibrationDueOn'],
          sentence: said(m.scaleCalibrationExpired_calibrationScaleRanOut, {
            id,
            calibrationDueOn: figure.date(calibrationDueOn),
            on: figure.date(on),
          }),
          data: { scale: id, calibrationDueOn, weighedOn: on },
        },
      ];
    });
  },
};
