import type { Due } from '../../../calc/lives/due.ts';
import { NUMBER_CLOCKS } from '../../../record/counts.ts';
import type { Life } from '../../../record/life.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits, hitsIn } from '../../hits.ts';
import { lifePath } from '../../life-path.ts';
import { type Rule, read } from '../../rule.ts';

export const lifeClockMissing: Rule = {
  code: 'LIFE_CLOCK_MISSING',
  severity: 'blocks',
  meaning: 'An interval counts by a clock that the last entry or the meters do not have',
  remedy: m.lifeClockMissing_remedy,
  source: read('UK accident report on a propeller lost after a calendar interval was not counted'),
  check: ({ visit, results }) => [
    ...hitsIn(['lives', 'items'], visit.lives?.items, ({ id, item, interval, lastDone }) => {
      const clocks = lackingThen(interval, lastDone);
      const hasOne = Object.values(lastDone).some((value) => value !== undefined);
      if (clocks.length === 0 || !hasOne) return undefined;
      return {
        field: 'lastDone',
        sentence: said(m.lifeClockMissing_lastEntryLacks, {
          id,
          item,
          clocks: list(
            clocks.map((clock) => termOf(clock)),
            said(m.lifeClockMissing_and),
          ),
        }),
        data: { life: id },
      };
    }),
    ...hits(results.due, (due) => {
      const clocks = lackingNow(due);
      if (clocks.length === 0) return undefined;
      return {
        path: lifePath(visit, due.id),
        sentence: said(m.lifeClockMissing_recordNotNow, {
          due: due.id,
          item: due.item,
          clocks: list(
            clocks.map((clock) => termOf(clock)),
            said(m.lifeClockMissing_and),
          ),
        }),
        data: { life: due.id },
      };
    }),
  ],
};

function lackingThen(interval: Life['interval'], lastDone: Life['lastDone']): string[] {
  return [
    ...NUMBER_CLOCKS.filter((clock) => interval[clock] !== undefined && lastDone[clock] === undefined),
    ...(interval.months !== undefined && lastDone.date === undefined ? ['date'] : []),
  ];
}

/** Clocks with a known due value but no current reading. */
function lackingNow({
  dueHours,
  hoursLeft,
  dueLandings,
  landingsLeft,
  dueCounts = {},
  countsLeft = {},
}: Due): string[] {
  return [
    ...(dueHours !== undefined && hoursLeft === undefined ? ['hours'] : []),
    ...(dueLandings !== undefined && landingsLeft === undefined ? ['landings'] : []),
    ...Object.keys(dueCounts).filter((clock) => !(clock in countsLeft)),
  ];
}
