import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const equipmentSumExceedsEmptyMass: Rule = {
  code: 'EQUIPMENT_SUM_EXCEEDS_EMPTY_MASS',
  severity: 'blocks',
  meaning: 'The equipment alone weighs more than the empty aircraft',
  remedy: phrase`Check units and masses of the list`,
  source: PRACTICE,
  check: ({ results, say }) => {
    const { schedule, change } = results;
    const sumKg = change.after.reduce((sum, { massKg }) => sum + massKg, 0);
    if (!schedule || sumKg <= schedule.massKg + 1e-6 || change.after.length === 0) return [];
    return [
      {
        path: ['baseline', 'equipment'],
        sentence: say.words`The equipment adds up to ${say.measure('mass', sumKg)}, more than the empty mass of ${say.measure('mass', schedule.massKg)}`,
        data: { sumKg, emptyKg: schedule.massKg },
      },
    ];
  },
};
