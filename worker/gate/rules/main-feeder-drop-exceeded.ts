import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const mainFeederDropExceeded: Rule = {
  code: 'MAIN_FEEDER_DROP_EXCEEDED',
  severity: 'blocks',
  meaning: 'A main power wire loses more than 2 % of the regulated voltage at rated current',
  remedy: phrase`Take a thicker wire or a shorter run, and look at its joints`,
  source: read('FAA-H-8083-31 chapter 9, voltage drop in wires: 2 % from source or battery to the bus'),
  check: ({ visit, results, say }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, mainFeeder, measuredDropV }, index): Hit[] => {
      const result = results.electrical?.circuits[index];
      if (!mainFeeder || !result) return [];
      const limitV = result.measuredLimitV;
      return [
        { what: 'computed', dropV: result.continuousDrop?.dropV ?? 0 },
        { what: 'measured', dropV: measuredDropV ?? 0 },
      ]
        .filter(({ dropV }) => !isAtMost(dropV, limitV))
        .map(({ what, dropV }) => {
          const [dropText, limitText] = say.plainApart(dropV, limitV, 2);
          return {
            path: ['electrical', 'circuits', index],
            sentence: say.words`Main power wire ${name}: ${say.term(what)} voltage drop ${dropText} V; the limit is ${limitText} V`,
            data: { dropV, limitV },
          };
        });
    }),
};
