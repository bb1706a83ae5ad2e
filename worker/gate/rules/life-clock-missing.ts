import type { Due } from '../../calc/lives/due.ts';
import type { Life } from '../../visit/life.ts';
import { phrase } from '../../words/words.ts';
import { lifePath } from '../life-path.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const lifeClockMissing: Rule = {
  code: 'LIFE_CLOCK_MISSING',
  severity: 'blocks',
  meaning: 'An interval has a clock that the last entry or the meters do not',
  remedy: phrase`Enter the date, hours or landings of the last time, and of now`,
  source: read('UK accident report on a propeller lost after a calendar interval was not counted'),
  check: ({ visit, results, say }) => [
    ...(visit.lives?.items ?? []).flatMap(({ id, item, interval, lastDone }, index): Hit[] => {
      const clocks = lackingThen(interval, lastDone);
      const hasOne = lastDone.date !== undefined || lastDone.hours !== undefined || lastDone.landings !== undefined;
      return clocks.length === 0 || !hasOne
        ? []
        : [
            {
              path: ['lives', 'items', index, 'lastDone'],
              sentence: say.words`${id}, ${item}: the last entry lacks ${clocks.map((clock) => say.term(clock)).join(say.words` and `)}`,
              data: { life: id },
            },
          ];
    }),
    ...results.due.flatMap((due): Hit[] => {
      const clocks = lackingNow(due);
      return clocks.length === 0
        ? []
        : [
            {
              path: lifePath(visit, due.id),
              sentence: say.words`${due.id}, ${due.item}: the record does not have the ${clocks.map((clock) => say.term(clock)).join(say.words` and `)} of now`,
              data: { life: due.id },
            },
          ];
    }),
  ],
};

function lackingThen(interval: Life['interval'], lastDone: Life['lastDone']): string[] {
  return [
    ...(['hours', 'landings'] as const).filter(
      (clock) => interval[clock] !== undefined && lastDone[clock] === undefined,
    ),
    ...(interval.months !== undefined && lastDone.date === undefined ? ['date'] : []),
  ];
}

/** Clocks on which it is known when a line comes due, but not where they stand. */
function lackingNow({ dueHours, hoursLeft, dueLandings, landingsLeft }: Due): string[] {
  return [
    ...(dueHours !== undefined && hoursLeft === undefined ? ['hours'] : []),
    ...(dueLandings !== undefined && landingsLeft === undefined ? ['landings'] : []),
  ];
}
