import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const statementUnknown: Rule = {
  code: 'STATEMENT_UNKNOWN',
  severity: 'blocks',
  meaning: 'The regime does not have the statement in the release',
  remedy: m.statementUnknown_remedy,
  source: PRACTICE,
  check: ({ visit, regime }) => {
    const { release } = visit;
    if (!release) return undefined;
    const further = (release.further ?? []).map(({ statement }, index) => ({
      statement,
      path: ['release', 'further', index, 'statement'],
    }));
    return hits(
      [{ statement: release.statement, path: ['release', 'statement'] }, ...further],
      ({ statement, path }) => {
        if (regime.statements.some(({ id }) => id === statement)) return undefined;
        return {
          path,
          sentence: said(m.statementUnknown_regimeNoStatement, {
            regime: regime.id,
            statement,
            statements: regime.statements.map(({ id }) => id).join(', '),
          }),
          data: { statement },
        };
      },
    );
  },
};
