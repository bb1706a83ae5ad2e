import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import { hoursRead } from '../../../calc/open-items/readings.ts';
import { namedMeter } from '../../../calc/open-items/stands-open.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const lifeDoneAhead: Rule = {
  code: 'LIFE_DONE_AHEAD',
  severity: 'blocks',
  meaning: 'An item was last done at more hours or landings than the aircraft has',
  remedy: m.lifeDoneAhead_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hitsIn(['lives', 'items'], visit.lives?.items, ({ id, item, meter, lastDone }) => {
      const hours = hoursRead(results.readings, namedMeter(visit, meter));
      const landings = results.readings.landings?.count;
      if (lastDone.hours !== undefined && hours !== undefined && !isAtMost(lastDone.hours, hours)) {
        const [doneText, hoursText] = figure.plainApart(lastDone.hours, hours, 1);
        const sentence = said(m.lifeDoneAhead_doneLastHMeter, { id, item, done: doneText, hours: hoursText });
        return { field: ['lastDone', 'hours'], sentence, data: { life: id } };
      }
      if (lastDone.landings !== undefined && landings !== undefined && lastDone.landings > landings) {
        const sentence = said(m.lifeDoneAhead_doneLastLandingsAircraft, {
          id,
          item,
          landings: figure.plain(lastDone.landings, 0),
          landings2: figure.plain(landings, 0),
        });
        return { field: ['lastDone', 'landings'], sentence, data: { life: id } };
      }
      return undefined;
    }),
};
