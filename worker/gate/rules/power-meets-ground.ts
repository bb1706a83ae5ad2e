import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const powerMeetsGround: Rule = {
  code: 'POWER_MEETS_GROUND',
  severity: 'blocks',
  meaning: 'A supply is joined to ground',
  remedy: phrase`Correct the wiring before power is applied`,
  source: PRACTICE,
  check: ({ results, say }) =>
    (results.wiring?.nets ?? []).flatMap((net): Hit[] => {
      const isSupplied =
        net.reaches.has('bus') ||
        net.reaches.has('protection') ||
        net.pins.some(({ pin }) => ['power', 'power-out'].includes(pin.direction));
      const isGrounded =
        net.reaches.has('ground') || net.pins.some(({ pin }) => ['ground', 'shield'].includes(pin.direction));
      const [first] = net.pins;
      if (!first || !isSupplied || !isGrounded) return [];
      return [
        {
          path: first.path,
          sentence: say.words`The conductor of ${first.key} (${first.pin.signal}) reaches both supply and ground`,
          data: { pin: first.key },
        },
      ];
    }),
};
