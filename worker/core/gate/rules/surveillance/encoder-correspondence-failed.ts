import { ENCODER_TOLERANCE_FT } from '../../../calc/surveillance/altimeter-limits.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const encoderCorrespondenceFailed: Rule = {
  code: 'ENCODER_CORRESPONDENCE_FAILED',
  severity: 'blocks',
  meaning: 'The encoder reports a level that differs too much from the altimeter',
  remedy: m.encoderCorrespondenceFailed_remedy,
  source: read('14 CFR 43 Appendix E (c); CS-ACNS'),
  check: ({ results }) =>
    hitsIn(['surveillance', 'encoder', 'points'], results.surveillance?.encoder, (point) => {
      if (point.isWithin) return undefined;
      const { altimeterFt, encoderFt, differenceFt } = point;
      return {
        sentence: said(m.encoderCorrespondenceFailed_ftEncoderReportsFt, {
          altimeter: figure.plain(altimeterFt, Number.isInteger(altimeterFt) ? 0 : 1),
          encoder: figure.plainApart(encoderFt, altimeterFt + Math.sign(differenceFt) * ENCODER_TOLERANCE_FT, 0)[0],
          encoderToleranceFt: ENCODER_TOLERANCE_FT,
        }),
        data: { altimeterFt, differenceFt },
      };
    }),
};
