import { timeLeft } from '../calc/open-items/time-left.ts';
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
}

/** What comes due after a visit, the soonest first: all that stands open with a limit, of this pack and of earlier ones. */
export function nextDue(
  { visit, results, say }: Pick<PackContext, 'visit' | 'results' | 'say'>,
  at: string,
): NextDue[] {
  return timeLeft(results.open.standing, visit, at).flatMap(({ id, text, until }) => {
    const { date, hours, landings } = until;
    const counted = landings === undefined ? undefined : landingsText(landings, say);
    const limit = eitherOf(say, dueLimit(say, date, hours), counted);
    return limit === undefined ? [] : [{ id, what: text, limit, date }];
  });
}
