import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const transmitMeetsTransmit: Rule = {
  code: 'TRANSMIT_MEETS_TRANSMIT',
  severity: 'blocks',
  meaning: 'Two outputs are joined',
  remedy: phrase`Cross the pair, so that what transmits meets what receives`,
  source: PRACTICE,
  check: ({ results, say }) =>
    (results.wiring?.nets ?? []).flatMap((net): Hit[] => {
      const [first, second] = net.pins.filter(({ pin }) => pin.direction === 'out');
      if (!first || !second) return [];
      return [
        {
          path: first.path,
          sentence: say.words`Output ${first.key} (${first.pin.signal}) meets output ${second.key} (${second.pin.signal})`,
          data: { pin: first.key },
        },
      ];
    }),
};
