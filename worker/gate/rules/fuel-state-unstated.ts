import { tanksOf } from '../../calc/fuel.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const fuelStateUnstated: Rule = {
  code: 'FUEL_STATE_UNSTATED',
  severity: 'blocks',
  meaning: 'The weighing does not say what fuel was aboard',
  remedy: 'State the fuel state, and the content of each tank where it was neither drained nor full',
  source: read('AC 43.13-1B ch. 10; CAP 562 weighing leaflet'),
  check: ({ visit }) => {
    const { weighing } = visit;
    if (!weighing) return [];
    if (weighing.fuelState === undefined)
      return [{ path: ['weighing', 'fuelState'], sentence: 'The weighing does not say what fuel was aboard' }];
    if (weighing.fuelState !== 'stated') return [];
    const stated = new Set((weighing.fuelAboard ?? []).map(({ station }) => station));
    return tanksOf(visit.aircraft).flatMap(({ id, name }): Hit[] =>
      stated.has(id)
        ? []
        : [
            {
              path: ['weighing', 'fuelAboard'],
              sentence: `The weighing does not say what ${name} held`,
              data: { station: id },
            },
          ],
    );
  },
};
