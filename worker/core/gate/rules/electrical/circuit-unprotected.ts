import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const circuitUnprotected: Rule = {
  code: 'CIRCUIT_UNPROTECTED',
  severity: 'blocks',
  meaning: 'A circuit has neither breaker nor fuse, and no reason is stated',
  remedy: m.circuitUnprotected_remedy,
  source: read('AC 43.13-1B 11-48: a protector opens before the rating of the wire is exceeded'),
  check: ({ visit }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ id, name, protection, unprotectedBecause }) => {
      if (protection || unprotectedBecause !== undefined) return undefined;
      return {
        field: 'protection',
        sentence: said(m.circuitUnprotected_circuitNoProtection, { name }),
        data: { circuit: id },
      };
    }),
};
