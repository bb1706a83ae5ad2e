import { dateOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const releaserNotRegistered: Rule = {
  code: 'RELEASER_NOT_REGISTERED',
  severity: 'blocks',
  meaning:
    'The person who is to release is not in the table of people of the workshop, or not with the right to release on this day; asked of workshops that keep such a table',
  remedy: phrase`Have an administrator enter the person, or name one who may release`,
  source: PRACTICE,
  check: ({ visit, facts, at, say }) => {
    const { people = [] } = facts;
    const by = visit.release?.by;
    if (people.length === 0 || by === undefined) return [];
    const registered = people.find(({ id }) => id === by);
    const on = dateOf(at);
    const mayRelease =
      registered?.scope.includes('release') && (registered.from ?? on) <= on && (registered.until ?? on) >= on;
    if (mayRelease) return [];
    return [
      {
        path: ['release', 'by'],
        sentence: registered
          ? say.words`${registered.name} may not release on ${say.date(on)} by the table of people of the workshop`
          : say.words`“${by}” is not in the table of people of the workshop`,
        data: { person: by },
      },
    ];
  },
};
