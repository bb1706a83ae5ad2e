import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const circuitUnprotected: Rule = {
  code: 'CIRCUIT_UNPROTECTED',
  severity: 'blocks',
  meaning: 'A circuit has neither breaker nor fuse, and no reason why it needs none',
  remedy: m.circuitUnprotected_remedy,
  source: read('AC 43.13-1B 11-48: a protector opens before the rating of the wire is exceeded'),
  check: ({ visit }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ id, name, protection, unprotectedBecause }, index): Hit[] => {
      if (protection || unprotectedBecause !== undefined) return [];
      return [
        {
          path: ['electrical', 'circuits', index, 'protection'],
          sentence: said(m.circuitUnprotected_circuitNoProtection, { name }),
          data: { circuit: id },
        },
      ];
    }),
};
