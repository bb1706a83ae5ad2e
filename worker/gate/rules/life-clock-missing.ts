import { type Hit, type Rule, read } from '../rule.ts';

export const lifeClockMissing: Rule = {
  code: 'LIFE_CLOCK_MISSING',
  severity: 'blocks',
  meaning: 'An interval has a clock that the last entry does not',
  remedy: 'Enter the date, hours or landings of the last time',
  source: read('UK accident report on a propeller lost after a calendar interval was not counted'),
  check: ({ visit }) =>
    (visit.lives?.items ?? []).flatMap(({ id, item, interval, lastDone }, index): Hit[] => {
      const lacking = (['hours', 'landings'] as const).filter(
        (clock) => interval[clock] !== undefined && lastDone[clock] === undefined,
      );
      const clocks = [...lacking, ...(interval.months !== undefined && lastDone.date === undefined ? ['date'] : [])];
      const hasOne = lastDone.date !== undefined || lastDone.hours !== undefined || lastDone.landings !== undefined;
      return clocks.length === 0 || !hasOne
        ? []
        : [
            {
              path: ['lives', 'items', index, 'lastDone'],
              sentence: `${id}, ${item}: the last entry lacks ${clocks.join(' and ')}`,
              data: { life: id },
            },
          ];
    }),
};
