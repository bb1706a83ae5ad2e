import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf, daysBetween } from '../../../units/calendar.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const bulletinSearchOld: Rule = {
  code: 'BULLETIN_SEARCH_OLD',
  severity: 'caution',
  meaning: 'The last search for bulletins is not recorded, or was long before the release',
  remedy: m.bulletinSearchOld_remedy,
  source: PRACTICE,
  values: ['bulletinSearchDays'],
  check: ({ visit, regime, at }) => {
    if (!visit.bulletins) return undefined;
    const { searchedOn } = visit.bulletins;
    const path = ['bulletins', 'searchedOn'];
    if (searchedOn === undefined) return { path, sentence: said(m.bulletinSearchOld_nothingTellsWhenBulletins) };
    const days = daysBetween(searchedOn, dateOf(at));
    const limit = regime.bulletinSearchDays.value;
    if (days <= limit) return undefined;
    return {
      path,
      sentence: said(m.bulletinSearchOld_bulletinsSearched, { searchedOn: figure.date(searchedOn), days, limit }),
      data: { days, limit },
    };
  },
};
