import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { type Rule, read } from '../../rule.ts';

export const testSetCalibrationExpired: Rule = {
  code: 'TEST_SET_CALIBRATION_EXPIRED',
  severity: 'caution',
  meaning: 'The calibration of a test set was not valid on the day of the test',
  remedy: m.testSetCalibrationExpired_remedy,
  source: read('ML.A.402(b)(4)'),
  check: ({ visit }) => {
    const test = visit.surveillance?.transponderTest;
    if (!test || test.testSet.calibrationDueOn >= dateOf(test.at)) return undefined;
    return {
      path: ['surveillance', 'transponderTest', 'testSet', 'calibrationDueOn'],
      sentence: said(m.testSetCalibrationExpired_calibrationTestSetRan, {
        serial: test.testSet.serial,
        calibrationDueOn: figure.date(test.testSet.calibrationDueOn),
        at: figure.date(dateOf(test.at)),
      }),
      data: { due: test.testSet.calibrationDueOn },
    };
  },
};
