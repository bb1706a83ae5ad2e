import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const protectionBelowLoad: Rule = {
  code: 'PROTECTION_BELOW_LOAD',
  severity: 'caution',
  meaning: 'The breaker or fuse is smaller than the continuous load, so that it opens in flight',
  remedy: phrase`Take a greater protector and the wire for it, or share the load`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, protection }, index): Hit[] => {
      const continuousA = results.electrical?.circuits[index]?.continuousA ?? 0;
      if (!protection || isAtLeast(protection.ratingA, continuousA)) return [];
      const [ratingText, loadText] = say.plainApart(protection.ratingA, continuousA, 1);
      return [
        {
          path: ['electrical', 'circuits', index, 'protection', 'ratingA'],
          sentence: say.words`Circuit ${name}: ${say.term(protection.kind)} of ${ratingText} A for a continuous load of ${loadText} A`,
          data: { ratingA: protection.ratingA, continuousA },
        },
      ];
    }),
};
