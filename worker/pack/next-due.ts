import { forecastDate } from '../calc/lives/due.ts';
import type { Results } from '../calc/results.ts';
import { hoursOf } from '../calc/total-hours.ts';
import { dateOf } from '../units/calendar.ts';
import { byText } from '../units/order.ts';
import type { Printer } from '../units/print.ts';
import type { Visit } from '../visit/visit.ts';
import type { PackContext } from './context.ts';
import { landingsText } from './views/counts.ts';
import { dueLimit, eitherOf } from './views/due-limit.ts';

/** Something that has to be done, and by when. */
export interface NextDue {
  id: string;
  what: string;
  /** Date, hours and landings, whichever comes first. */
  limit: string;
  /** The date of the limit alone, where it has one. */
  date: string | undefined;
  /** Its hours, and the meter that they are read on: that of the airframe where none is named. */
  hours: number | undefined;
  meter: string | undefined;
  landings: number | undefined;
}

const NEVER = '9999-12-31';

/** What comes due after a visit, the soonest first: the lines of the due list, and findings that were put off. */
export function nextDue(
  { visit, results, say }: Pick<PackContext, 'visit' | 'results' | 'say'>,
  at: string,
): NextDue[] {
  return [...lives(visit, results, say), ...deferrals(visit, dateOf(say.local(at)), say)]
    .sort((a, b) => byText(a.expected, b.expected) || byText(a.id, b.id))
    .map(({ expected: _expected, ...due }) => due);
}

type Expected = NextDue & { expected: string };

function lives(visit: Visit, { due }: Results, say: Printer): Expected[] {
  return due.flatMap(({ id, item, dueDate, dueHours, meter, dueLandings, forecastDate: expected = NEVER }) => {
    const landings = dueLandings === undefined ? undefined : landingsText(dueLandings, say);
    const limit = eitherOf(say, dueLimit(visit, { date: dueDate, hours: dueHours, meter }, say), landings);
    if (limit === undefined) return [];
    return [{ id, what: item, limit, date: dueDate, hours: dueHours, meter, landings: dueLandings, expected }];
  });
}

function deferrals(visit: Visit, today: string, say: Printer): Expected[] {
  const hoursNow = hoursOf(visit, 'airframe');
  return (visit.findings ?? []).flatMap(({ id, text, deferral }) => {
    const { untilDate, untilHours } = deferral ?? {};
    const limit = dueLimit(visit, { date: untilDate, hours: untilHours }, say);
    if (limit === undefined) return [];
    const hoursLeft = untilHours === undefined || hoursNow === undefined ? undefined : untilHours - hoursNow;
    const expected = forecastDate(today, untilDate, hoursLeft, visit.lives?.hoursPerYear) ?? NEVER;
    const [meter, landings] = [undefined, undefined];
    return [{ id, what: text, limit, date: untilDate, hours: untilHours, meter, landings, expected }];
  });
}
