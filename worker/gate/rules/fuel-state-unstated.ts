import { tanksOf } from '../../calc/fuel.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const fuelStateUnstated: Rule = {
  code: 'FUEL_STATE_UNSTATED',
  severity: 'blocks',
  meaning: 'The weighing does not say what fuel was aboard',
  remedy: phrase`State the fuel state, and the content of each tank where it was neither drained nor full`,
  source: read('AC 43.13-1B ch. 10; CAP 562 weighing leaflet'),
  check: ({ visit, say }) => {
    const { weighing } = visit;
    if (!weighing) return [];
    if (weighing.fuelState === undefined)
      return [{ path: ['weighing', 'fuelState'], sentence: say.words`The weighing does not say what fuel was aboard` }];
    if (weighing.fuelState !== 'stated') return [];
    const stated = new Set((weighing.fuelAboard ?? []).map(({ station }) => station));
    return tanksOf(visit.aircraft).flatMap(({ id, name }): Hit[] =>
      stated.has(id)
        ? []
        : [
            {
              path: ['weighing', 'fuelAboard'],
              sentence: say.words`The weighing does not say what ${name} held`,
              data: { station: id },
            },
          ],
    );
  },
};
