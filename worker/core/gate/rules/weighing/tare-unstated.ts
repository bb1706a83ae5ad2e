import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const tareUnstated: Rule = {
  code: 'TARE_UNSTATED',
  severity: 'blocks',
  meaning: 'The tare at a weighing point is not recorded; zero is stated too',
  remedy: m.tareUnstated_remedy,
  source: read('AC 43.13-1B ch. 10 (tare deducted at each point)'),
  check: ({ visit }) =>
    hitsIn(['weighing', 'points'], visit.weighing?.points, ({ id, name, tareKg }) =>
      tareKg === undefined
        ? { field: 'tare', sentence: said(m.tareUnstated_point, { name }), data: { point: id } }
        : undefined,
    ),
};
