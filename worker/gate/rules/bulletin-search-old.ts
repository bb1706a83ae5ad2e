import { dateOf, daysBetween } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

const FRESH_DAYS = 7;

export const bulletinSearchOld: Rule = {
  code: 'BULLETIN_SEARCH_OLD',
  severity: 'caution',
  meaning: 'Nothing tells when bulletins were searched, or it was long before the release',
  remedy: phrase`Search again`,
  source: PRACTICE,
  check: ({ visit, at, say }) => {
    if (!visit.bulletins) return [];
    const { searchedOn } = visit.bulletins;
    if (searchedOn !== undefined && daysBetween(searchedOn, dateOf(at)) <= FRESH_DAYS) return [];
    const sentence = searchedOn
      ? say.words`Bulletins were searched ${say.date(searchedOn)}`
      : say.words`Nothing tells when bulletins were searched`;
    return [{ path: ['bulletins', 'searchedOn'], sentence }];
  },
};
