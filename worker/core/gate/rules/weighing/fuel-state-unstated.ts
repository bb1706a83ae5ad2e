import { tanksOf } from '../../../calc/loading/fuel.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const fuelStateUnstated: Rule = {
  code: 'FUEL_STATE_UNSTATED',
  severity: 'blocks',
  meaning: 'The fuel aboard at the weighing is not recorded',
  remedy: m.fuelStateUnstated_remedy,
  source: read('AC 43.13-1B ch. 10; CAP 562 weighing leaflet'),
  check: ({ visit }) => {
    const { weighing } = visit;
    if (!weighing || tanksOf(visit.aircraft).length === 0) return undefined;
    if (weighing.fuelState === undefined)
      return { path: ['weighing', 'fuelState'], sentence: said(m.fuelStateUnstated_weighingNotSayWhat) };
    if (weighing.fuelState !== 'stated') return undefined;
    const stated = new Set((weighing.fuelAboard ?? []).map(({ station }) => station));
    return hits(tanksOf(visit.aircraft), ({ id, name }) => {
      if (stated.has(id)) return undefined;
      return {
        path: ['weighing', 'fuelAboard'],
        sentence: said(m.fuelStateUnstated_weighingNotSayWhatHeld, { name }),
        data: { station: id },
      };
    });
  },
};
