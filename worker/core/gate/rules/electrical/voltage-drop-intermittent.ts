import * as m from '../../../text/generated/messages.ts';
import { dropsOver } from '../../circuit-drops.ts';
import { memory, type Rule } from '../../rule.ts';

export const voltageDropIntermittent: Rule = {
  code: 'VOLTAGE_DROP_INTERMITTENT',
  severity: 'caution',
  meaning: 'The voltage drop from bus to equipment is over the limit of an intermittent load',
  remedy: m.voltageDropIntermittent_remedy,
  source: memory('AC 43.13-1B table 11-6'),
  check: (input) => dropsOver(input, 'intermittent', m.voltageDropIntermittent_circuit),
};
