import { clocksOf, shiftOf } from '../../../calc/lives/product-time.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import { countRead, hoursRead } from '../../../calc/open-items/readings.ts';
import { NUMBER_CLOCKS, type NumberClock } from '../../../record/counts.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { saidClock } from '../../said-clock.ts';

export const lifeDoneAhead: Rule = {
  code: 'LIFE_DONE_AHEAD',
  severity: 'blocks',
  meaning: 'An item was last done at more hours or counts than its product or the aircraft has',
  remedy: m.lifeDoneAhead_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hitsIn(['lives', 'items'], visit.lives?.items, (life) => {
      const { id, item, lastDone } = life;
      const { named, counting, shift, product } = clocksOf(visit, life);
      for (const clock of NUMBER_CLOCKS) {
        const total =
          clock === 'hours'
            ? hoursRead(results.readings, named)
            : countRead(results.readings, clock, { counters: counting });
        const done = lastDone[clock];
        if (done === undefined || total === undefined || isAtMost(done + shift(clock), total)) continue;
        return { field: ['lastDone', clock], sentence: aheadOf(clock, done, total), data: { life: id } };
      }
      return undefined;

      function aheadOf(clock: NumberClock, done: number, total: number): Said {
        if (clock === 'hours') {
          const [doneText, hoursText] = figure.plainApart(done, total - shift(clock), 1);
          const values = { id, item, done: doneText, hours: hoursText };
          return shiftOf(product, clock) === undefined
            ? said(m.lifeDoneAhead_doneLastHMeter, values)
            : said(m.lifeDoneAhead_doneLastHProduct, values);
        }
        const [then, now] = [saidClock(clock, done), saidClock(clock, total - shift(clock))];
        return said(m.lifeDoneAhead_doneLastCounted, { id, item, done: then, now });
      }
    }),
};
