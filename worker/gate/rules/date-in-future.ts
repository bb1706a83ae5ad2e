import { dateOf, instantOf } from '../../units/calendar.ts';
import { fieldsOf } from '../../visit/visit-fields.ts';
import { phrase } from '../../words/words.ts';
import { fieldName } from '../field-name.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const dateInFuture: Rule = {
  code: 'DATE_IN_FUTURE',
  severity: 'blocks',
  meaning: 'The record dates something after the present moment',
  remedy: phrase`Correct the date`,
  source: PRACTICE,
  check: ({ visit, timestamps, at, say }) => [
    ...timestamps
      .filter(({ value, means }) => means.future === undefined && instantOf(value) > instantOf(at))
      .map((place) => ({
        path: place.path,
        sentence: say.words`The ${fieldName(place.means.event, place, say)} is dated ${say.moment(place.value)}, which is still to come`,
        data: { stated: place.value, at },
      })),
    ...fieldsOf(visit, 'past-date')
      .filter(({ value, means }) => means.code === undefined && value > dateOf(at))
      .map((place) => ({
        path: place.path,
        sentence: say.words`The ${fieldName(place.means.event, place, say)} is dated ${say.date(place.value)}, which is still to come`,
        data: { stated: place.value, at },
      })),
  ],
};
