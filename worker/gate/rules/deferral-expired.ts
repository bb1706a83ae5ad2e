import { isAtLeast } from '../../calc/limit-met.ts';
import { hoursRead } from '../../calc/open-items/readings.ts';
import { namedMeter } from '../../calc/open-items/stands-open.ts';
import { dateOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const deferralExpired: Rule = {
  code: 'DEFERRAL_EXPIRED',
  severity: 'blocks',
  meaning: 'The limit of a deferred item has passed',
  remedy: phrase`Rectify it now`,
  source: read('ML.A.403 (within the stated limit)'),
  check: ({ visit, results, at, say }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, deferral }, index): Hit[] => {
      if (disposition !== 'deferred' || !deferral) return [];
      const { untilDate, untilHours } = deferral;
      const hours = hoursRead(results.readings, namedMeter(visit, deferral.meter));
      const path = ['findings', index, 'deferral'];
      if (untilDate !== undefined && untilDate < dateOf(at))
        return [
          {
            path: [...path, 'untilDate'],
            sentence: say.words`Finding ${id} was to be done by ${say.date(untilDate)}`,
            data: { finding: id, untilDate },
          },
        ];
      if (untilHours === undefined || hours === undefined || isAtLeast(untilHours, hours)) return [];
      const [untilText, hoursText] = say.plainApart(untilHours, hours, 1);
      return [
        {
          path: [...path, 'untilHours'],
          sentence: say.words`Finding ${id} was to be done by ${untilText} h; the meter has ${hoursText} h`,
          data: { finding: id, untilHours, hours },
        },
      ];
    }),
};
