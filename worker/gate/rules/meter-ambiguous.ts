import { standsOpen } from '../../calc/open-items/stands-open.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const meterAmbiguous: Rule = {
  code: 'METER_AMBIGUOUS',
  severity: 'blocks',
  meaning: 'Something comes due by hours, several meters count them, and it does not say on which it is read',
  remedy: phrase`Name the meter`,
  source: PRACTICE,
  check: ({ visit, at, say }) => {
    const meters = (visit.meters?.readings ?? []).filter(({ of }) => of === 'airframe').map(({ id }) => id);
    if (meters.length < 2) return [];
    return standsOpen(visit, at).flatMap(({ id, text, until, meter, kind, path }): Hit[] => {
      if (until.hours === undefined || meter !== undefined) return [];
      return [
        {
          path: kind === 'deferral' ? [...path, 'deferral'] : path,
          sentence: say.words`${id}, ${text}, does not say which meter its hours are read on: ${meters.join(', ')}`,
          data: { id },
        },
      ];
    });
  },
};
