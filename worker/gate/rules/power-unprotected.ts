import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const powerUnprotected: Rule = {
  code: 'POWER_UNPROTECTED',
  severity: 'blocks',
  meaning: 'Equipment gets its supply past every breaker and fuse',
  remedy: phrase`Lead the supply through a breaker or fuse`,
  source: read('AC 43.13-1B 11-48: a protector opens before the rating of the wire is exceeded'),
  check: ({ results, say }) =>
    (results.wiring?.nets ?? []).flatMap((net): Hit[] => {
      const first = net.pins.find(({ pin }) => pin.direction === 'power');
      const isProtected = net.reaches.has('protection') || net.pins.some(({ pin }) => pin.direction === 'power-out');
      if (!first || isProtected) return [];
      return [
        {
          path: first.path,
          sentence: say.words`The supply of ${first.key} (${first.pin.signal}) comes through no breaker or fuse`,
          data: { pin: first.key },
        },
      ];
    }),
};
