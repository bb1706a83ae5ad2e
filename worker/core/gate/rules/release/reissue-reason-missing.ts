import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const reissueReasonMissing: Rule = {
  code: 'REISSUE_REASON_MISSING',
  severity: 'blocks',
  meaning: 'A new issue of a pack does not state why it replaces the earlier one',
  remedy: m.reissueReasonMissing_remedy,
  source: PRACTICE,
  check: ({ visit, earlierIssue }) => {
    if (!earlierIssue || !visit.release) return undefined;
    const { pack, changes } = earlierIssue;
    const isNew = changes.some(({ part }) => part === '' || part === '/release' || part === '/release/reasonForIssue');
    const { reasonForIssue } = visit.release;
    if (reasonForIssue !== undefined && isNew) return undefined;
    const message = reasonForIssue === undefined ? m.reissueReasonMissing_noReason : m.reissueReasonMissing_oldReason;
    return { path: ['release', 'reasonForIssue'], sentence: said(message, { pack }), data: { pack } };
  },
};
