import { dateOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { memory, type Rule } from '../rule.ts';

export const testSetCalibrationExpired: Rule = {
  code: 'TEST_SET_CALIBRATION_EXPIRED',
  severity: 'caution',
  meaning: 'The calibration of a test set did not hold on the day',
  remedy: phrase`Test again with a calibrated set`,
  source: memory('ML.A.402 (calibrated tools)'),
  check: ({ visit, say }) => {
    const test = visit.surveillance?.transponderTest;
    if (!test || test.testSet.calibrationDueOn >= dateOf(test.at)) return [];
    return [
      {
        path: ['surveillance', 'transponderTest', 'testSet', 'calibrationDueOn'],
        sentence: say.words`The calibration of test set ${test.testSet.serial} ran out ${say.date(test.testSet.calibrationDueOn)}; tested ${say.date(dateOf(test.at))}`,
        data: { due: test.testSet.calibrationDueOn },
      },
    ];
  },
};
