import { isAtMost } from '../../calc/limit-met.ts';
import { hoursRead } from '../../calc/open-items/readings.ts';
import { namedMeter } from '../../calc/open-items/stands-open.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const lifeDoneAhead: Rule = {
  code: 'LIFE_DONE_AHEAD',
  severity: 'blocks',
  meaning: 'Something was done last at more hours or landings than the aircraft has',
  remedy: phrase`Correct the last entry, its meter, or the reading`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    (visit.lives?.items ?? []).flatMap(({ id, item, meter, lastDone }, index): Hit[] => {
      const path = ['lives', 'items', index, 'lastDone'];
      const hours = hoursRead(results.readings, namedMeter(visit, meter));
      const landings = results.readings.landings?.count;
      if (lastDone.hours !== undefined && hours !== undefined && !isAtMost(lastDone.hours, hours)) {
        const [doneText, hoursText] = say.plainApart(lastDone.hours, hours, 1);
        const sentence = say.words`${id}, ${item}, was done last at ${doneText} h; the meter has ${hoursText} h`;
        return [{ path: [...path, 'hours'], sentence, data: { life: id } }];
      }
      if (lastDone.landings !== undefined && landings !== undefined && lastDone.landings > landings) {
        const sentence = say.words`${id}, ${item}, was done last at ${say.plain(lastDone.landings, 0)} landings; the aircraft has ${say.plain(landings, 0)}`;
        return [{ path: [...path, 'landings'], sentence, data: { life: id } }];
      }
      return [];
    }),
};
