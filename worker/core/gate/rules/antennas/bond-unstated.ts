import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const bondUnstated: Rule = {
  code: 'BOND_UNSTATED',
  severity: 'caution',
  meaning: 'The bond of an antenna fitted or moved in this visit was not measured',
  remedy: m.bondUnstated_remedy,
  source: read('AC 43.13-1B 11-188f: bond tested after work'),
  check: ({ visit }) =>
    hitsIn(['antennas', 'items'], visit.antennas?.items, ({ name, bondMilliohm, groundPlane, change }) => {
      if (change === 'kept' || !groundPlane || bondMilliohm !== undefined) return undefined;
      return {
        field: 'bondMilliohm',
        sentence: said(m.bondUnstated_bondGroundPlaneNot, { name }),
        data: { antenna: name },
      };
    }),
};
