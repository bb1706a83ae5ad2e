import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const statementUnknown: Rule = {
  code: 'STATEMENT_UNKNOWN',
  severity: 'blocks',
  meaning: 'The release names a statement that the regime does not have',
  remedy: phrase`Name a statement of the regime`,
  source: PRACTICE,
  check: ({ visit, regime, say }) => {
    const statement = visit.release?.statement;
    if (statement === undefined || regime.statements.some(({ id }) => id === statement)) return [];
    return [
      {
        path: ['release', 'statement'],
        sentence: say.words`The regime ${regime.id} has no statement “${statement}”; it has ${regime.statements.map(({ id }) => id).join(', ')}`,
        data: { statement },
      },
    ];
  },
};
