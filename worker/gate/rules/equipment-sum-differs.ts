import { isAtMost } from '../../calc/limit-met.ts';
import { atArm, total } from '../../calc/mass-moment.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const equipmentSumDiffers: Rule = {
  code: 'EQUIPMENT_SUM_DIFFERS',
  severity: 'blocks',
  meaning: 'A list that is said to be complete does not add up to the empty mass',
  remedy: phrase`Weigh again, or find the item that the list lacks`,
  source: PRACTICE,
  check: ({ visit, results, say }) => {
    const { baseline } = visit;
    if (baseline?.equipmentSumToleranceKg === undefined) return [];
    const sumKg = total((baseline.equipment ?? []).map(({ massKg, armMm }) => atArm(massKg, armMm))).massKg;
    const difference = sumKg - baseline.emptyMassKg;
    if (isAtMost(Math.abs(difference), baseline.equipmentSumToleranceKg)) return [];
    return [
      {
        path: ['baseline', 'equipment'],
        sentence: say.words`The ${results.change.before.length} items of the list add up to ${say.measure('mass', sumKg)}, the empty mass is ${say.measure('mass', baseline.emptyMassKg)}; the tolerance stated is ${say.measure('mass', baseline.equipmentSumToleranceKg)}`,
        data: { sumKg, emptyKg: baseline.emptyMassKg, toleranceKg: baseline.equipmentSumToleranceKg },
      },
    ];
  },
};
