import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const notRequiredUnmatched: Rule = {
  code: 'NOT_REQUIRED_UNMATCHED',
  severity: 'caution',
  meaning: 'A statement that something is not required is about nothing that the work requires',
  remedy: m.notRequiredUnmatched_remedy,
  source: PRACTICE,
  check: ({ visit, requirements }) =>
    hitsIn(['notRequired'], visit.notRequired, (statement) => {
      const about = requirements.filter(({ statements }) => statements.some((each) => each.statement === statement));
      const evidence = termOf(statement.evidence);
      if (about.length === 0)
        return { field: 'evidence', sentence: said(m.notRequiredUnmatched_noObligation, { evidence }) };
      return about.every(({ showing }) => showing.isShown)
        ? { field: 'evidence', sentence: said(m.notRequiredUnmatched_shown, { evidence }) }
        : undefined;
    }),
};
