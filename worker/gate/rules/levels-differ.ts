import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const levelsDiffer: Rule = {
  code: 'LEVELS_DIFFER',
  severity: 'blocks',
  meaning: 'Contacts of different electrical levels are joined',
  remedy: phrase`High to high, low to low, one kind of level: correct the wiring`,
  source: PRACTICE,
  check: ({ results, say }) =>
    (results.wiring?.nets ?? []).flatMap((net): Hit[] => {
      const [first, ...others] = net.pins.filter(({ pin }) => pin.level !== undefined);
      const second = others.find(({ pin }) => pin.level !== first?.pin.level);
      if (!first || !second) return [];
      return [
        {
          path: first.path,
          sentence: say.words`${first.key} is ${say.term(first.pin.level ?? '')} and ${second.key} is ${say.term(second.pin.level ?? '')}, on one conductor`,
          data: { pin: first.key },
        },
      ];
    }),
};
