import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const levelUnstated: Rule = {
  code: 'LEVEL_UNSTATED',
  severity: 'blocks',
  meaning: 'The weighing does not say how level the aircraft stood',
  remedy: phrase`Measure and enter the attitude both ways`,
  source: read('AC 43.13-1B ch. 10; CAP 562 weighing leaflet (rigging position)'),
  check: ({ visit, say }) =>
    visit.weighing && !visit.weighing.level
      ? [{ path: ['weighing', 'level'], sentence: say.words`The weighing does not say how level the aircraft stood` }]
      : [],
};
