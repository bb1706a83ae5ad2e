import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const deferralOwnerNotTold: Rule = {
  code: 'DEFERRAL_OWNER_NOT_TOLD',
  severity: 'blocks',
  meaning: 'The owner was not told of a deferred item',
  remedy: phrase`Tell the owner and say so`,
  source: read('AMC on defects (pilot told before flight)'),
  check: ({ visit, say }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, deferral }, index): Hit[] =>
      disposition === 'deferred' && deferral?.ownerInformed === false
        ? [
            {
              path: ['findings', index, 'deferral', 'ownerInformed'],
              sentence: say.words`The owner was not told that finding ${id} is deferred`,
              data: { finding: id },
            },
          ]
        : [],
    ),
};
