import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const releaserNotRegistered: Rule = {
  code: 'RELEASER_NOT_REGISTERED',
  severity: 'blocks',
  meaning: 'The releasing person is not in the people table of the workshop, or may not release on this day',
  remedy: m.releaserNotRegistered_remedy,
  source: PRACTICE,
  check: ({ visit, facts, at }) => {
    const { people = [] } = facts;
    const by = visit.release?.by;
    if (people.length === 0 || by === undefined) return undefined;
    const registered = people.find(({ id }) => id === by);
    const on = dateOf(at);
    const mayRelease =
      registered?.scope.includes('release') && (registered.from ?? on) <= on && (registered.until ?? on) >= on;
    if (mayRelease) return undefined;
    return {
      path: ['release', 'by'],
      sentence: registered
        ? said(m.releaserNotRegistered_mayNotReleaseTable, { registered: registered.name, on: figure.date(on) })
        : said(m.releaserNotRegistered_notTablePeopleWorkshop, { by }),
      data: { person: by },
    };
  },
};
