import { type Hit, type Rule, read } from '../rule.ts';

export const deferralOwnerNotTold: Rule = {
  code: 'DEFERRAL_OWNER_NOT_TOLD',
  severity: 'blocks',
  meaning: 'The owner was not told of a deferred item',
  remedy: 'Tell the owner and say so',
  source: read('AMC on defects (pilot told before flight)'),
  check: ({ visit }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, deferral }, index): Hit[] =>
      disposition === 'deferred' && deferral?.ownerInformed === false
        ? [
            {
              path: ['findings', index, 'deferral', 'ownerInformed'],
              sentence: `The owner was not told that finding ${id} is deferred`,
              data: { finding: id },
            },
          ]
        : [],
    ),
};
