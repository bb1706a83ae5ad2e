import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const wireUnidentified: Rule = {
  code: 'WIRE_UNIDENTIFIED',
  severity: 'blocks',
  meaning: 'A found wire is not identified, or has no decision',
  remedy: m.wireUnidentified_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['wiring', 'found'], visit.wiring?.found, ({ id, from, to, decision, identifiedBy }) => {
      const isKept = decision === 'traced' || decision === 'retained';
      if (decision !== 'unidentified' && !(isKept && identifiedBy === 'not-identified')) return undefined;
      return {
        field: 'decision',
        sentence: said(m.wireUnidentified_wireNotIdentified, { id, from, to }),
        data: { wire: id },
      };
    }),
};
