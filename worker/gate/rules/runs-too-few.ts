import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const runsTooFew: Rule = {
  code: 'RUNS_TOO_FEW',
  severity: 'caution',
  meaning: 'Only one run was weighed, so nothing is known of the scatter',
  remedy: phrase`Lift the aircraft off and weigh again`,
  source: read('CAP 562 weighing leaflet (several readings)'),
  check: ({ visit, say }) => {
    const runs = Math.min(...(visit.weighing?.points ?? []).map(({ readingsKg }) => readingsKg.length));
    if (runs !== 1) return [];
    return [
      {
        path: ['weighing', 'points'],
        sentence: say.words`Only one run was weighed; its scatter is not known and not in the uncertainty`,
        data: { runs },
      },
    ];
  },
};
