import type { OpenItem } from '../../../calc/open-items/open-item.ts';
import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

type Life = NonNullable<Visit['lives']>['items'][number];

/** Clocks of a due line, and the tolerance on each. */
const CLOCKS = [
  { clock: 'date', tolerance: 'toleranceMonths' },
  { clock: 'hours', tolerance: 'toleranceHours' },
  { clock: 'landings' },
  { clock: 'launches' },
  { clock: 'cycles' },
  { clock: 'starts' },
] as const;
type Clock = (typeof CLOCKS)[number];

/** Hours are read to a tenth. */
const READ_HOURS = 0.05;

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
      const values = { item: life.item, due: String(before.until[wrong.clock]), pack: before.item ?? before.id };
      return {
        field: 'wasDueAt',
        sentence:
          life.wasDueAt?.[wrong.clock] === undefined
            ? said(m.duePointDiffers_unstated, values)
            : said(m.duePointDiffers_other, values),
        data: { life: life.id, clock: wrong.clock },
      };
    }),
};

function isWrong({ clock, ...of }: Clock, life: Life, { until, done }: OpenItem): boolean {
  const [due, stated, now] = [until[clock], life.wasDueAt?.[clock], life.lastDone[clock]];
  if (due === undefined || now === undefined || !isAfter(now, done?.[clock])) return false;
  if (stated !== undefined)
    return typeof stated === 'number' && typeof due === 'number' ? Math.abs(stated - due) > READ_HOURS : stated !== due;
  return 'tolerance' in of && life[of.tolerance] !== undefined && isAfter(now, due);
}

const isAfter = (now: string | number, before: string | number | undefined): boolean =>
  before === undefined || now > before;
