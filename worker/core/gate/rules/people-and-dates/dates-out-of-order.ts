import type { Place } from '../../../record/record-index.ts';
import { fieldsOf } from '../../../record/visit-fields.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { dateOf, isDate } from '../../../units/calendar.ts';
import { fieldName } from '../../field-name.ts';
import { hits } from '../../hits.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';
import { type BrokenBound, brokenBound, brokenDay } from '../../time-bounds.ts';

type Dated = Place<'timestamp'> | Place<'past-date'>;

export const datesOutOfOrder: Rule = {
  code: 'DATES_OUT_OF_ORDER',
  severity: 'blocks',
  meaning: 'A date is before arrival, after the end of work, or before a step that comes first',
  remedy: m.datesOutOfOrder_remedy,
  source: PRACTICE,
  check: ({ visit, timestamps, at }) => {
    const days = fieldsOf(visit, 'past-date');
    // A day still to come is a separate finding.
    const past = days.filter(({ value }) => value <= dateOf(at));
    const dated: readonly Dated[] = [...timestamps, ...days];
    return [
      ...hits(timestamps, (place) => hit(place, brokenBound(place), dated)),
      ...hits(past, (place) => hit(place, brokenDay(place), dated)),
    ];
  },
};

function hit(place: Dated, broken: BrokenBound | undefined, dated: readonly Dated[]): Hit | undefined {
  if (!broken) return undefined;
  const { value, path, means } = place;
  const [what, when] = [fieldName(means.event, place), saidTime(value)];
  const [bound, bounds] = [boundName(dated, broken), saidTime(broken.value)];
  return {
    path,
    sentence:
      broken.side === 'before'
        ? said(m.datesOutOfOrder_datedBefore, { what, when, bound, bounds })
        : said(m.datesOutOfOrder_datedAfter, { what, when, bound, bounds }),
    data: { stated: value },
  };
}

const saidTime = (value: string): Value => (isDate(value) ? figure.date(value) : figure.timestamp(value));

function boundName(dated: readonly Dated[], { path }: BrokenBound): Value {
  const key = path.join('/');
  const bound = dated.find((place) => place.path.join('/') === key);
  return bound ? fieldName(bound.means.event, bound) : '';
}
