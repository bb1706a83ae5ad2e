import { type Rule, read } from '../rule.ts';

export const levelUnstated: Rule = {
  code: 'LEVEL_UNSTATED',
  severity: 'blocks',
  meaning: 'The weighing does not say how level the aircraft stood',
  remedy: 'Measure and enter the attitude both ways',
  source: read('AC 43.13-1B ch. 10; CAP 562 weighing leaflet (rigging position)'),
  check: ({ visit }) =>
    visit.weighing && !visit.weighing.level
      ? [{ path: ['weighing', 'level'], sentence: 'The weighing does not say how level the aircraft stood' }]
      : [],
};
