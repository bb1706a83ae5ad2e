import { timeLeft } from '../calc/open-items/time-left.ts';
import type { PackContext } from './context.ts';
import { landingsText } from './views/counts.ts';
import { dueLimit, eitherOf } from './views/due-limit.ts';

/** Something that has to be done, and by when. */
export interface NextDue {
  /** Its name for the life of the aircraft; in the pack in which it first stands, its identifier in the record. */
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

/** What comes due after a visit, the soonest first: all that stands open with a limit, of this pack and of earlier ones. */
export function nextDue(
  { visit, results, say }: Pick<PackContext, 'visit' | 'results' | 'say'>,
  at: string,
): NextDue[] {
  return timeLeft(results.open.standing, visit, say.local(at)).flatMap(
    ({ id, item = id, kind, text, until, of, meter }) => {
      const { date, hours, landings } = until;
      const counted = landings === undefined ? undefined : landingsText(landings, say);
      const limit = eitherOf(say, dueLimit(visit, { date, hours, meter, of }, say), counted);
      const what = kind === 'bulletin' ? `${id}, ${text}` : text;
      return limit === undefined ? [] : [{ id: item, what, limit, date, hours, meter, landings }];
    },
  );
}
