import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const bondUnstated: Rule = {
  code: 'BOND_UNSTATED',
  severity: 'caution',
  meaning: 'The bond of an antenna that the visit fitted or moved was not measured',
  remedy: m.bondUnstated_remedy,
  source: read('AC 43.13-1B 11-188f: bond tested after work'),
  check: ({ visit }) =>
    (visit.antennas?.items ?? []).flatMap(({ name, bondMilliohm, groundPlane, change }, index): Hit[] => {
      if (change === 'kept' || !groundPlane || bondMilliohm !== undefined) return [];
      return [
        {
          path: ['antennas', 'items', index, 'bondMilliohm'],
          sentence: said(m.bondUnstated_bondGroundPlaneNot, { name }),
          data: { antenna: name },
        },
      ];
    }),
};
