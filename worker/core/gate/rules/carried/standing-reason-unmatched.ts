import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { reasonFor } from '../../restated-parts.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const standingReasonUnmatched: Rule = {
  code: 'STANDING_REASON_UNMATCHED',
  severity: 'caution',
  meaning: 'A reason is given for a change of the standing file that the record does not make',
  remedy: m.standingReasonUnmatched_remedy,
  source: PRACTICE,
  check: ({ visit, facts, restated }) => {
    const { standing } = visit;
    if (!standing || !facts.standing) return undefined;
    return hitsIn(['standing', 'changed'], standing.changed, (reason) =>
      restated.some((part) => reasonFor(part, [reason]))
        ? undefined
        : {
            field: 'part',
            sentence: said(m.standingReasonUnmatched_same, { part: reason.part, pack: standing.pack }),
          },
    );
  },
};
