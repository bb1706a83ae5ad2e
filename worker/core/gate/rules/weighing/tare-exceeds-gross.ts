import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const tareExceedsGross: Rule = {
  code: 'TARE_EXCEEDS_GROSS',
  severity: 'blocks',
  meaning: 'The tare is more than the reading',
  remedy: m.tareExceedsGross_remedy,
  source: read('AC 43.13-1B ch. 10 (tare deducted at each point)'),
  check: ({ visit }) =>
    hitsIn(['weighing', 'points'], visit.weighing?.points, ({ name, tareKg = 0, readingsKg }) =>
      hits(readingsKg, (readingKg, run) => {
        if (tareKg === 0 || isAtLeast(readingKg, tareKg)) return undefined;
        const [tareText, readingText] = figure.apart('mass', tareKg, readingKg);
        return {
          field: ['readings', run],
          sentence: said(m.tareExceedsGross_tareExceedsReading, { name, tare: tareText, reading: readingText }),
          data: { tareKg, readingKg },
        };
      }),
    ),
};
