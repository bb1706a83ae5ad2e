import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';
import { conductorName } from '../wire-name.ts';

export const protectionAboveWire: Rule = {
  code: 'PROTECTION_ABOVE_WIRE',
  severity: 'blocks',
  meaning: 'The breaker or fuse is greater than the wire allows',
  remedy: phrase`Fit a smaller protector or a thicker wire`,
  source: read('AC 43.13-1B table 11-3 and 11-48'),
  check: ({ visit, results, say }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, gauge, material, protection }, index): Hit[] => {
      const limit = results.electrical?.circuits[index]?.protectionLimit;
      if (!protection || !limit || isAtMost(protection.ratingA, limit.limitA)) return [];
      const [ratingText, limitText] = say.plainApart(protection.ratingA, limit.limitA, 1);
      return [
        {
          path: ['electrical', 'circuits', index, 'protection', 'ratingA'],
          sentence: say.words`Circuit ${name}: ${say.term(protection.kind)} of ${ratingText} A on wire ${conductorName({ gauge, material }, say)}, which allows ${limitText} A`,
          data: { ratingA: protection.ratingA, limitA: limit.limitA, gauge },
        },
      ];
    }),
};
