import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const deferralOwnerNotTold: Rule = {
  code: 'DEFERRAL_OWNER_NOT_TOLD',
  severity: 'blocks',
  meaning: 'The owner was not told of a deferred item',
  remedy: m.deferralOwnerNotTold_remedy,
  source: read('AMC on defects (pilot told before flight)'),
  check: ({ visit }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, deferral }, index): Hit[] =>
      disposition === 'deferred' && deferral?.ownerInformed === false
        ? [
            {
              path: ['findings', index, 'deferral', 'ownerInformed'],
              sentence: said(m.deferralOwnerNotTold_ownerNotToldFinding, { id }),
              data: { finding: id },
            },
          ]
        : [],
    ),
};
