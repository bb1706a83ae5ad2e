import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { addMonths } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

/** Longest usual term of a calibration. */
const YEARS = 2;

export const scaleTermLong: Rule = {
  code: 'SCALE_TERM_LONG',
  severity: 'caution',
  meaning: 'A scale has a calibration that is valid for more than two years',
  remedy: m.scaleTermLong_remedy,
  source: read('AMC1 SPO.POL.105(b): scales calibrated within two years; taken here as a parallel'),
  check: ({ visit: { weighing } }) =>
    hitsIn(['weighing', 'scales'], weighing?.scales, ({ id, calibratedOn, calibrationDueOn }) => {
      if (calibratedOn === undefined || addMonths(calibratedOn, 12 * YEARS) >= calibrationDueOn) return undefined;
      return {
        field: 'calibrationDueOn',
        sentence: said(m.scaleTermLong_term, {
          id,
          calibratedOn: figure.date(calibratedOn),
          calibrationDueOn: figure.date(calibrationDueOn),
          years: YEARS,
        }),
        data: { scale: id, calibratedOn, calibrationDueOn },
      };
    }),
};
