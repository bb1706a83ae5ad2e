import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const panelsNotClosed: Rule = {
  code: 'PANELS_NOT_CLOSED',
  severity: 'blocks',
  meaning: 'Nobody stated that all panels were refitted',
  remedy: phrase`Close the panels and state it`,
  source: read('145.A.48 (access panels refitted)'),
  check: ({ visit, say }) =>
    visit.inspection && visit.inspection.panelsClosed !== true
      ? [
          {
            path: ['inspection', 'panelsClosed'],
            sentence: say.words`The record does not state that all panels were refitted`,
          },
        ]
      : [],
};
