import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const wireUnidentified: Rule = {
  code: 'WIRE_UNIDENTIFIED',
  severity: 'blocks',
  meaning: 'A wire found in the aircraft is not identified, or nothing was decided about it',
  remedy: m.wireUnidentified_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.wiring?.found ?? []).flatMap(({ id, from, to, decision, identifiedBy }, index): Hit[] => {
      const isKept = decision === 'traced' || decision === 'retained';
      if (decision !== 'unidentified' && !(isKept && identifiedBy === 'not-identified')) return [];
      return [
        {
          path: ['wiring', 'found', index, 'decision'],
          sentence: said(m.wireUnidentified_wireNotIdentified, { id, from, to }),
          data: { wire: id },
        },
      ];
    }),
};
