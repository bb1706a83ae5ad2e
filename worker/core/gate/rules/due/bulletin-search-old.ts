import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf, daysBetween } from '../../../units/calendar.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

const FRESH_DAYS = 7;

export const bulletinSearchOld: Rule = {
  code: 'BULLETIN_SEARCH_OLD',
  severity: 'caution',
  meaning: 'The last search for bulletins is not recorded, or was long before the release',
  remedy: m.bulletinSearchOld_remedy,
  source: PRACTICE,
  check: ({ visit, at }) => {
    if (!visit.bulletins) return undefined;
    const { searchedOn } = visit.bulletins;
    if (searchedOn !== undefined && daysBetween(searchedOn, dateOf(at)) <= FRESH_DAYS) return undefined;
    const sentence = searchedOn
      ? said(m.bulletinSearchOld_bulletinsSearched, { searchedOn: figure.date(searchedOn) })
      : said(m.bulletinSearchOld_nothingTellsWhenBulletins);
    return { path: ['bulletins', 'searchedOn'], sentence };
  },
};
