import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const powerMeetsGround: Rule = {
  code: 'POWER_MEETS_GROUND',
  severity: 'blocks',
  meaning: 'A supply is connected to ground',
  remedy: m.powerMeetsGround_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.wiring?.nets, (net) => {
      const isSupplied =
        net.reaches.has('bus') ||
        net.reaches.has('protection') ||
        net.pins.some(({ pin }) => ['power', 'power-out'].includes(pin.direction));
      const isGrounded =
        net.reaches.has('ground') || net.pins.some(({ pin }) => ['ground', 'shield'].includes(pin.direction));
      const [first] = net.pins;
      if (!first || !isSupplied || !isGrounded) return undefined;
      return {
        path: first.path,
        sentence: said(m.powerMeetsGround_conductorReachesBothSupply, { first: first.key, signal: first.pin.signal }),
        data: { pin: first.key },
      };
    }),
};
