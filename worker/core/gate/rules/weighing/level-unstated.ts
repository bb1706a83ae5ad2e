import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const levelUnstated: Rule = {
  code: 'LEVEL_UNSTATED',
  severity: 'blocks',
  meaning: 'The attitude of the aircraft at the weighing is not recorded',
  remedy: m.levelUnstated_remedy,
  source: read('AC 43.13-1B ch. 10; CAP 562 weighing leaflet (rigging position)'),
  check: ({ visit }) =>
    visit.weighing && !visit.weighing.level
      ? { path: ['weighing', 'level'], sentence: said(m.levelUnstated_weighingNotSayHow) }
      : undefined,
};
