import { isAtMost } from '../../calc/limit-met.ts';
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
    if (!schedule || isAtMost(sumKg, schedule.massKg) || change.after.length === 0) return [];
    const [sumText, massText] = say.apart('mass', sumKg, schedule.massKg);
    return [
      {
        path: ['baseline', 'equipment'],
        sentence: say.words`The equipment adds up to ${sumText}, more than the empty mass of ${massText}`,
        data: { sumKg, emptyKg: schedule.massKg },
      },
    ];
  },
};
