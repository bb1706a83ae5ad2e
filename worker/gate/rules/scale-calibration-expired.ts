import { dateOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, memory, type Rule } from '../rule.ts';

export const scaleCalibrationExpired: Rule = {
  code: 'SCALE_CALIBRATION_EXPIRED',
  severity: 'blocks',
  meaning: 'The calibration of a scale did not hold on the day of the weighing',
  remedy: phrase`Weigh again with a calibrated scale`,
  source: memory('ML.A.402 (calibrated tools)'),
  check: ({ visit, say }) => {
    const { weighing } = visit;
    if (!weighing) return [];
    const on = dateOf(weighing.weighedAt);
    return weighing.scales.flatMap(({ id, calibratedOn, calibrationDueOn }, index): Hit[] => {
      const path = ['weighing', 'scales', index];
      if (calibratedOn !== undefined && calibratedOn > on)
        return [
          {
            path: [...path, 'calibratedOn'],
            sentence: say.words`Scale ${id} was calibrated ${say.date(calibratedOn)}, after the weighing ${say.date(on)}`,
            data: { scale: id },
          },
        ];
      if (calibrationDueOn >= on) return [];
      return [
        {
          path: [...path, 'calibrationDueOn'],
          sentence: say.words`The calibration of scale ${id} ran out ${say.date(calibrationDueOn)}; weighed ${say.date(on)}`,
          data: { scale: id, calibrationDueOn, weighedOn: on },
        },
      ];
    });
  },
};
