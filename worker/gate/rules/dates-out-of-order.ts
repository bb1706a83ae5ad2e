import { phrase } from '../../words/words.ts';
import { fieldName } from '../field-name.ts';
import { type Hit, PRACTICE, type Rule, type RuleInput } from '../rule.ts';
import { type BrokenBound, brokenBound } from '../time-bounds.ts';

export const datesOutOfOrder: Rule = {
  code: 'DATES_OUT_OF_ORDER',
  severity: 'blocks',
  meaning: 'Something is dated before the aircraft arrived, after the work had ended, or before what it follows',
  remedy: phrase`Correct the date, or the arrival or end of work`,
  source: PRACTICE,
  check: (input) =>
    input.timestamps.flatMap((place): Hit[] => {
      const broken = brokenBound(place);
      if (!broken) return [];
      const { value, path, means } = place;
      const { say } = input;
      const [what, when] = [fieldName(means.event, place, say), say.moment(value)];
      const [bound, bounds] = [boundName(input, broken), say.moment(broken.value)];
      return [
        {
          path,
          sentence:
            broken.side === 'before'
              ? say.words`The ${what} is dated ${when}, before the ${bound} ${bounds}`
              : say.words`The ${what} is dated ${when}, after the ${bound} ${bounds}`,
          data: { stated: value },
        },
      ];
    }),
};

function boundName({ timestamps, say }: RuleInput, { path }: BrokenBound): string {
  const key = path.join('/');
  const bound = timestamps.find((place) => place.path.join('/') === key);
  return bound ? fieldName(bound.means.event, bound, say) : '';
}
