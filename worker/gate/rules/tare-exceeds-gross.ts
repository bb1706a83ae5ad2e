import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const tareExceedsGross: Rule = {
  code: 'TARE_EXCEEDS_GROSS',
  severity: 'blocks',
  meaning: 'Tare is more than the scale showed',
  remedy: phrase`Correct tare or reading; a tail held down by the aircraft reads negative without tare`,
  source: read('AC 43.13-1B ch. 10 (tare deducted at each point)'),
  check: ({ visit, say }) =>
    (visit.weighing?.points ?? []).flatMap(({ name, tareKg = 0, readingsKg }, index) =>
      readingsKg.flatMap((readingKg, run): Hit[] => {
        if (tareKg === 0 || isAtLeast(readingKg, tareKg)) return [];
        const [tareText, readingText] = say.apart('mass', tareKg, readingKg);
        return [
          {
            path: ['weighing', 'points', index, 'readings', run],
            sentence: say.words`${name}: tare ${tareText} exceeds the reading ${readingText}`,
            data: { tareKg, readingKg },
          },
        ];
      }),
    ),
};
