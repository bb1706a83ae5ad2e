import { ENCODER_TOLERANCE_FT } from '../../calc/surveillance/altimeter-limits.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const encoderCorrespondenceFailed: Rule = {
  code: 'ENCODER_CORRESPONDENCE_FAILED',
  severity: 'blocks',
  meaning: 'The encoder reports a level that differs too much from the altimeter',
  remedy: phrase`Adjust or replace the encoder and compare again`,
  source: read('14 CFR 43 Appendix E (c); CS-ACNS'),
  check: ({ results, say }) =>
    (results.surveillance?.encoder ?? []).flatMap(({ altimeterFt, encoderFt, differenceFt, isWithin }, index): Hit[] =>
      isWithin
        ? []
        : [
            {
              path: ['surveillance', 'encoder', 'points', index],
              sentence: say.words`At ${say.plain(altimeterFt, 0)} ft the encoder reports ${say.plain(encoderFt, 0)} ft; the limit is ${ENCODER_TOLERANCE_FT} ft`,
              data: { altimeterFt, differenceFt },
            },
          ],
    ),
};
