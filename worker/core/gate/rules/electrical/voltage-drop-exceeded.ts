import * as m from '../../../text/generated/messages.ts';
import { dropsOver } from '../../circuit-drops.ts';
import { type Rule, read } from '../../rule.ts';

export const voltageDropExceeded: Rule = {
  code: 'VOLTAGE_DROP_EXCEEDED',
  severity: 'blocks',
  meaning: 'The voltage drop from bus to equipment is over the limit of a continuous load',
  remedy: m.voltageDropExceeded_remedy,
  source: read('AC 43.13-1B tables 11-7 and 11-8'),
  check: (input) => dropsOver(input, 'continuous', m.voltageDropExceeded_circuitVoltageDropV),
};
