import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

/** One step of a meter that shows tenths, and the reading of it. */
const UNEXPLAINED_HOURS = 0.15;

export const metersJump: Rule = {
  code: 'METERS_JUMP',
  severity: 'caution',
  meaning: 'A meter ran further than the engine running on the ground explains',
  remedy: phrase`Enter the running, or correct the reading`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const minutes = visit.meters?.groundRunMinutes ?? 0;
    return (visit.meters?.readings ?? []).flatMap(({ id, inHours, outHours }, index): Hit[] => {
      const jump = outHours - inHours;
      if (isAtMost(jump, minutes / 60 + UNEXPLAINED_HOURS)) return [];
      const [jumpText, explainedText] = say.plainApart(jump, minutes / 60, 1);
      return [
        {
          path: ['meters', 'readings', index, 'outHours'],
          sentence: say.words`Meter ${id} ran ${jumpText} h; engine running on the ground explains ${explainedText} h`,
          data: { jumpHours: jump, groundRunMinutes: minutes },
        },
      ];
    });
  },
};
