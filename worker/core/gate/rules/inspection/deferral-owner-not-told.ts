import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const deferralOwnerNotTold: Rule = {
  code: 'DEFERRAL_OWNER_NOT_TOLD',
  severity: 'blocks',
  meaning: 'The owner was not informed of a deferred item',
  remedy: m.deferralOwnerNotTold_remedy,
  source: read('AMC on defects (pilot told before flight)'),
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, disposition, deferral }) =>
      disposition === 'deferred' && deferral?.ownerInformed === false
        ? {
            field: ['deferral', 'ownerInformed'],
            sentence: said(m.deferralOwnerNotTold_ownerNotToldFinding, { id }),
            data: { finding: id },
          }
        : undefined,
    ),
};
