import type { Place } from '../../../record/record-index.ts';
import { fieldsOf } from '../../../record/visit-fields.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { dateOf, instantOf } from '../../../units/calendar.ts';
import { fieldName } from '../../field-name.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const dateInFuture: Rule = {
  code: 'DATE_IN_FUTURE',
  severity: 'blocks',
  meaning: 'The record has a date in the future',
  remedy: m.dateInFuture_remedy,
  source: PRACTICE,
  check: ({ visit, timestamps, at }) => [
    ...timestamps
      .filter(({ value, means }) => means.future === undefined && instantOf(value) > instantOf(at))
      .map((place) => hit(place, figure.timestamp(place.value), at)),
    ...fieldsOf(visit, 'past-date')
      .filter(({ value, means }) => means.code === undefined && value > dateOf(at))
      .map((place) => hit(place, figure.date(place.value), at)),
  ],
};

function hit(place: Place<'timestamp'> | Place<'past-date'>, stated: Value, at: string): Hit {
  return {
    path: place.path,
    sentence: said(m.dateInFuture_datedStillCome, { event: fieldName(place.means.event, place), place: stated }),
    data: { stated: place.value, at },
  };
}
