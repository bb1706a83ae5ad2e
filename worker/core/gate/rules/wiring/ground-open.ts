import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const groundOpen: Rule = {
  code: 'GROUND_OPEN',
  severity: 'blocks',
  meaning: 'A ground contact is not connected to ground',
  remedy: m.groundOpen_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.wiring?.nets, (net) => {
      const first = net.pins.find(({ pin }) => pin.direction === 'ground');
      if (!first || net.reaches.has('ground')) return undefined;
      return {
        path: first.path,
        sentence: said(m.groundOpen_leadsNoGroundPoint, { first: first.key, signal: first.pin.signal }),
        data: { pin: first.key },
      };
    }),
};
