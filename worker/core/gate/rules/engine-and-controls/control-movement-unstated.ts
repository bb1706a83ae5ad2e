import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { movementsOf } from '../../control-movement.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const controlMovementUnstated: Rule = {
  code: 'CONTROL_MOVEMENT_UNSTATED',
  severity: 'caution',
  meaning: 'The check of an aileron, elevator or rudder does not state which way the surface moved',
  remedy: m.controlMovementUnstated_remedy,
  source: read('public accident reports on crossed controls after maintenance'),
  check: ({ visit }) =>
    hitsIn(['controls', 'checks'], visit.controls?.checks, ({ axis, movement }) => {
      const movements = movementsOf(axis);
      if (!movements || (movement !== undefined && movements.includes(movement))) return undefined;
      const values = { axis: termOf(axis) };
      return {
        field: 'movement',
        sentence:
          movement === undefined
            ? said(m.controlMovementUnstated_missing, values)
            : said(m.controlMovementUnstated_ofOther, { ...values, movement: termOf(movement) }),
        data: { axis },
      };
    }),
};
