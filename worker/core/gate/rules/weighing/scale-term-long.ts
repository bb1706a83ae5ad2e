import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { addMonths } from '../../../units/calendar.ts';
import { CALIBRATION_SOURCE, CALIBRATION_YEARS } from '../../calibration-years.ts';
import { hitsIn } from '../../hits.ts';
import type { Rule } from '../../rule.ts';

export const scaleTermLong: Rule = {
  code: 'SCALE_TERM_LONG',
  severity: 'caution',
  meaning: 'A scale has a calibration that is valid for more than two years',
  remedy: m.scaleTermLong_remedy,
  source: CALIBRATION_SOURCE,
  check: ({ visit: { weighing } }) =>
    hitsIn(['weighing', 'scales'], weighing?.scales, ({ id, calibratedOn, calibrationDueOn }) => {
      if (calibratedOn === undefined || addMonths(calibratedOn, 12 * CALIBRATION_YEARS) >= calibrationDueOn)
        return undefined;
      return {
        field: 'calibrationDueOn',
        sentence: said(m.scaleTermLong_term, {
          id,
          calibratedOn: figure.date(calibratedOn),
          calibrationDueOn: figure.date(calibrationDueOn),
          years: CALIBRATION_YEARS,
        }),
        data: { scale: id, calibratedOn, calibrationDueOn },
      };
    }),
};
