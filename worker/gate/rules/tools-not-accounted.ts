import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const toolsNotAccounted: Rule = {
  code: 'TOOLS_NOT_ACCOUNTED',
  severity: 'blocks',
  meaning: 'Nobody stated that all tools were counted back',
  remedy: phrase`Count tools and parts; search until all are found`,
  source: read('145.A.48 (clear of tools and equipment)'),
  check: ({ visit, say }) =>
    visit.inspection && visit.inspection.toolsAccountedFor !== true
      ? [
          {
            path: ['inspection', 'toolsAccountedFor'],
            sentence: say.words`The record does not state that all tools were counted back`,
          },
        ]
      : [],
};
