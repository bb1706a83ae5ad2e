import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const groundOpen: Rule = {
  code: 'GROUND_OPEN',
  severity: 'blocks',
  meaning: 'A ground contact does not lead to ground',
  remedy: phrase`Lead it to a ground point`,
  source: PRACTICE,
  check: ({ results, say }) =>
    (results.wiring?.nets ?? []).flatMap((net): Hit[] => {
      const first = net.pins.find(({ pin }) => pin.direction === 'ground');
      if (!first || net.reaches.has('ground')) return [];
      return [
        {
          path: first.path,
          sentence: say.words`${first.key} (${first.pin.signal}) leads to no ground point`,
          data: { pin: first.key },
        },
      ];
    }),
};
