import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const nothingToCompare: Rule = {
  code: 'NOTHING_TO_COMPARE',
  severity: 'caution',
  meaning: 'No earlier empty mass with its arm tests the weighing',
  remedy: m.nothingToCompare_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    results.weighing && !results.comparison
      ? { path: ['baseline'], sentence: said(m.nothingToCompare_nothing) }
      : undefined,
};
