import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const levelsDiffer: Rule = {
  code: 'LEVELS_DIFFER',
  severity: 'blocks',
  meaning: 'Contacts of different electrical levels are joined',
  remedy: m.levelsDiffer_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.wiring?.nets, (net) => {
      const [first, ...others] = net.pins.filter(({ pin }) => pin.level !== undefined);
      const second = others.find(({ pin }) => pin.level !== first?.pin.level);
      if (!first || !second) return undefined;
      return {
        path: first.path,
        sentence: said(m.levelsDiffer_oneConductor, {
          first: first.key,
          level: termOf(first.pin.level ?? ''),
          second: second.key,
          level2: termOf(second.pin.level ?? ''),
        }),
        data: { pin: first.key },
      };
    }),
};
