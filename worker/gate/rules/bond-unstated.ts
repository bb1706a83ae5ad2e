import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const bondUnstated: Rule = {
  code: 'BOND_UNSTATED',
  severity: 'caution',
  meaning: 'The bond of an antenna that the visit fitted or moved was not measured',
  remedy: phrase`Measure it with a bond tester and enter it`,
  source: read('AC 43.13-1B 11-188f: bond tested after work'),
  check: ({ visit, say }) =>
    (visit.antennas?.items ?? []).flatMap(({ name, bondMilliohm, groundPlane, change }, index): Hit[] => {
      if (change === 'kept' || !groundPlane || bondMilliohm !== undefined) return [];
      return [
        {
          path: ['antennas', 'items', index, 'bondMilliohm'],
          sentence: say.words`${name}: the bond to its ground plane was not measured`,
          data: { antenna: name },
        },
      ];
    }),
};
