import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const protectionBelowLoad: Rule = {
  code: 'PROTECTION_BELOW_LOAD',
  severity: 'caution',
  meaning: 'The rating of the breaker or fuse is below the continuous load, so it opens in flight',
  remedy: m.protectionBelowLoad_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ name, protection }, index) => {
      const continuousA = results.electrical?.circuits[index]?.continuousA ?? 0;
      if (!protection || isAtLeast(protection.ratingA, continuousA)) return undefined;
      const [ratingText, loadText] = figure.plainApart(protection.ratingA, continuousA, 1);
      return {
        field: ['protection', 'ratingA'],
        sentence: said(m.protectionBelowLoad_circuitContinuousLoad, {
          name,
          kind: termOf(protection.kind),
          rating: ratingText,
          load: loadText,
        }),
        data: { ratingA: protection.ratingA, continuousA },
      };
    }),
};
