import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const notOwedUnmatched: Rule = {
  code: 'NOT_OWED_UNMATCHED',
  severity: 'caution',
  meaning: 'A statement that something is not owed is about nothing that the work owes',
  remedy: m.notOwedUnmatched_remedy,
  source: PRACTICE,
  check: ({ visit, owed }) =>
    hitsIn(['notOwed'], visit.notOwed, (statement) => {
      const about = owed.filter(({ statements }) => statements.some((each) => each.statement === statement));
      const evidence = termOf(statement.evidence);
      if (about.length === 0)
        return { field: 'evidence', sentence: said(m.notOwedUnmatched_noObligation, { evidence }) };
      return about.every(({ showing }) => showing.isShown)
        ? { field: 'evidence', sentence: said(m.notOwedUnmatched_shown, { evidence }) }
        : undefined;
    }),
};
