import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const powerUnprotected: Rule = {
  code: 'POWER_UNPROTECTED',
  severity: 'blocks',
  meaning: 'Equipment is supplied without breaker or fuse',
  remedy: m.powerUnprotected_remedy,
  source: read('AC 43.13-1B 11-48: a protector opens before the rating of the wire is exceeded'),
  check: ({ results }) =>
    hits(results.wiring?.nets, (net) => {
      const first = net.pins.find(({ pin }) => pin.direction === 'power');
      const isProtected = net.reaches.has('protection') || net.pins.some(({ pin }) => pin.direction === 'power-out');
      if (!first || isProtected) return undefined;
      return {
        path: first.path,
        sentence: said(m.powerUnprotected_supplyComesThroughNo, { first: first.key, signal: first.pin.signal }),
        data: { pin: first.key },
      };
    }),
};
