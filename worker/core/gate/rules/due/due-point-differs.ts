import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import type { OpenItem } from '../../../calc/open-items/open-item.ts';
import { NUMBER_CLOCKS } from '../../../record/counts.ts';
import type { Visit } from '../../../record/visit.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { saidClock } from '../../said-clock.ts';

type Life = NonNullable<Visit['lives']>['items'][number];

const CLOCKS = ['date', ...NUMBER_CLOCKS] as const;
type Clock = (typeof CLOCKS)[number];

export const duePointDiffers: Rule = {
  code: 'DUE_POINT_DIFFERS',
  severity: 'caution',
  meaning: 'An item done again does not count from the point at which the last pack had it due',
  remedy: m.duePointDiffers_remedy,
  source: read('ML.A.302 (tolerance, next interval)'),
  check: ({ visit, facts }) =>
    hitsIn(['lives', 'items'], visit.lives?.items, (life) => {
      const before = facts.open?.find(({ kind, id }) => kind === 'due' && id === life.id);
      if (!before) return undefined;
      const wrong = CLOCKS.find((clock) => isWrong(clock, life, before));
      if (!wrong) return undefined;
      const values = { item: life.item, due: saidDue(wrong, before), openItem: before.item ?? before.id };
      return {
        field: 'wasDueAt',
        sentence:
          life.wasDueAt?.[wrong] === undefined
            ? said(m.duePointDiffers_unstated, values)
            : said(m.duePointDiffers_other, values),
        data: { life: life.id, clock: wrong },
      };
    }),
};

function isWrong(clock: Clock, life: Life, { until, done }: OpenItem): boolean {
  const [due, stated, now] = [until[clock], life.wasDueAt?.[clock], life.lastDone[clock]];
  if (due === undefined || now === undefined || !isAfter(now, done?.[clock])) return false;
  if (stated !== undefined) return isAfter(stated, due) || isAfter(due, stated);
  const hasTolerance =
    (clock === 'date' && life.toleranceMonths !== undefined) ||
    (clock === 'hours' && life.toleranceHours !== undefined);
  return hasTolerance && isAfter(now, due);
}

function isAfter(now: string | number, before: string | number | undefined): boolean {
  if (typeof now === 'number' && typeof before === 'number') return !isAtMost(now, before);
  return before === undefined || now > before;
}

/** Due point of an open item on a clock. */
function saidDue(clock: Clock, { until }: OpenItem): Value {
  if (clock === 'date') return until.date === undefined ? '' : figure.date(until.date);
  return saidClock(clock, until[clock] ?? 0);
}
