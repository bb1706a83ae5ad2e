import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/**
 * What a reading may lie off the fitted curve. A reading that is 3° wrong among eight lies about 1° off, because the
 * curve follows it. Common practice, no source.
 */
const STRAY_DEG = 1;

export const swingReadingStray: Rule = {
  code: 'SWING_READING_STRAY',
  severity: 'caution',
  meaning: 'A reading of a swing lies far from the curve of the others',
  remedy: m.swingReadingStray_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hitsIn(['compass', 'swings'], results.compass?.swings, ({ state, readings, greatestResidualDeg }) => {
      if (greatestResidualDeg === undefined || isAtMost(greatestResidualDeg, STRAY_DEG)) return undefined;
      const index = readings.findIndex(({ residualDeg = 0 }) => Math.abs(residualDeg) === greatestResidualDeg);
      const [residual, most] = figure.plainApart(greatestResidualDeg, STRAY_DEG, 1);
      const heading = figure.asIs(readings[index]?.headingDeg ?? 0);
      return {
        field: ['readings', index],
        sentence: said(m.swingReadingStray_offCurve, { state: termOf(state), heading, residual, most }),
        data: { residualDeg: greatestResidualDeg },
      };
    }),
};
