import { tanksOf } from '../../../calc/loading/fuel.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const fuelStateUnstated: Rule = {
  code: 'FUEL_STATE_UNSTATED',
  severity: 'blocks',
  meaning: 'The weighing does not say what fuel was aboard',
  remedy: m.fuelStateUnstated_remedy,
  source: read('AC 43.13-1B ch. 10; CAP 562 weighing leaflet'),
  check: ({ visit }) => {
    const { weighing } = visit;
    if (!weighing) return [];
    if (weighing.fuelState === undefined)
      return [{ path: ['weighing', 'fuelState'], sentence: said(m.fuelStateUnstated_weighingNotSayWhat) }];
    if (weighing.fuelState !== 'stated') return [];
    const stated = new Set((weighing.fuelAboard ?? []).map(({ station }) => station));
    return tanksOf(visit.aircraft).flatMap(({ id, name }): Hit[] =>
      stated.has(id)
        ? []
        : [
            {
              path: ['weighing', 'fuelAboard'],
              sentence: said(m.fuelStateUnstated_weighingNotSayWhatHeld, { name }),
              data: { station: id },
            },
          ],
    );
  },
};
