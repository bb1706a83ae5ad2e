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
      if (!(jump > minutes / 60 + UNEXPLAINED_HOURS)) return [];
      return [
        {
          path: ['meters', 'readings', index, 'outHours'],
          sentence: say.words`Meter ${id} ran ${say.plain(jump, 1)} h; engine running on the ground explains ${say.plain(minutes / 60, 1)} h`,
          data: { jumpHours: jump, groundRunMinutes: minutes },
        },
      ];
    });
  },
};
