import { printNumber } from '../../units/rounding.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const mainFeederDropExceeded: Rule = {
  code: 'MAIN_FEEDER_DROP_EXCEEDED',
  severity: 'blocks',
  meaning: 'A main power wire loses more than 2 % of the regulated voltage at rated current',
  remedy: 'Take a thicker wire or a shorter run, and look at its joints',
  source: read('FAA-H-8083-31 chapter 9, voltage drop in wires: 2 % from source or battery to the bus'),
  check: ({ visit, results }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, mainFeeder, measuredDropV }, index): Hit[] => {
      const result = results.electrical?.circuits[index];
      if (!mainFeeder || !result) return [];
      const limitV = result.measuredLimitV;
      return [
        { what: 'computed', dropV: result.continuousDrop?.dropV ?? 0 },
        { what: 'measured', dropV: measuredDropV ?? 0 },
      ]
        .filter(({ dropV }) => dropV > limitV)
        .map(({ what, dropV }) => ({
          path: ['electrical', 'circuits', index],
          sentence: `Main power wire ${name}: ${what} voltage drop ${printNumber(dropV, 2)} V; the limit is ${printNumber(limitV, 2)} V`,
          data: { dropV, limitV },
        }));
    }),
};
