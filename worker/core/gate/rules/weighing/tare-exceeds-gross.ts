import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const tareExceedsGross: Rule = {
  code: 'TARE_EXCEEDS_GROSS',
  severity: 'blocks',
  meaning: 'Tare is more than the scale showed',
  remedy: m.tareExceedsGross_remedy,
  source: read('AC 43.13-1B ch. 10 (tare deducted at each point)'),
  check: ({ visit }) =>
    (visit.weighing?.points ?? []).flatMap(({ name, tareKg = 0, readingsKg }, index) =>
      readingsKg.flatMap((readingKg, run): Hit[] => {
        if (tareKg === 0 || isAtLeast(readingKg, tareKg)) return [];
        const [tareText, readingText] = figure.apart('mass', tareKg, readingKg);
        return [
          {
            path: ['weighing', 'points', index, 'readings', run],
            sentence: said(m.tareExceedsGross_tareExceedsReading, { name, tare: tareText, reading: readingText }),
            data: { tareKg, readingKg },
          },
        ];
      }),
    ),
};
