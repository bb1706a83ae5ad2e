import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const findingLimitationUnsaid: Rule = {
  code: 'FINDING_LIMITATION_UNSAID',
  severity: 'blocks',
  meaning: 'A finding is answered by a limitation that the release does not have, or that has no cause any more',
  remedy: m.findingLimitationUnsaid_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, disposition, limitation }) => {
      if (limitation === undefined) return undefined;
      const data = { finding: id };
      if (disposition === 'rectified')
        return { field: 'limitation', sentence: said(m.findingLimitationUnsaid_rectified, { id, limitation }), data };
      return !visit.release || visit.release.limitations?.includes(limitation)
        ? undefined
        : { field: 'limitation', sentence: said(m.findingLimitationUnsaid_notInRelease, { id, limitation }), data };
    }),
};
