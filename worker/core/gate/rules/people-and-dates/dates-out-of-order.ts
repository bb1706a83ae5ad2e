import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { fieldName } from '../../field-name.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule, type RuleInput } from '../../rule.ts';
import { type BrokenBound, brokenBound } from '../../time-bounds.ts';

export const datesOutOfOrder: Rule = {
  code: 'DATES_OUT_OF_ORDER',
  severity: 'blocks',
  meaning: 'A date is before arrival, after the end of work, or before a step that comes first',
  remedy: m.datesOutOfOrder_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(input.timestamps, (place) => {
      const broken = brokenBound(place);
      if (!broken) return undefined;
      const { value, path, means } = place;
      const [what, when] = [fieldName(means.event, place), figure.timestamp(value)];
      const [bound, bounds] = [boundName(input, broken), figure.timestamp(broken.value)];
      return {
        path,
        sentence:
          broken.side === 'before'
            ? said(m.datesOutOfOrder_datedBefore, { what, when, bound, bounds })
            : said(m.datesOutOfOrder_datedAfter, { what, when, bound, bounds }),
        data: { stated: value },
      };
    }),
};

function boundName({ timestamps }: RuleInput, { path }: BrokenBound): Value {
  const key = path.join('/');
  const bound = timestamps.find((place) => place.path.join('/') === key);
  return bound ? fieldName(bound.means.event, bound) : '';
}
