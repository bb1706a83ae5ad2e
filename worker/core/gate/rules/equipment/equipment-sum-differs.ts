import { atArm, total } from '../../../calc/mass/mass-moment.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const equipmentSumDiffers: Rule = {
  code: 'EQUIPMENT_SUM_DIFFERS',
  severity: 'blocks',
  meaning: 'A list marked as complete does not add up to the empty mass',
  remedy: m.equipmentSumDiffers_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { baseline } = visit;
    if (baseline?.equipmentSumToleranceKg === undefined) return undefined;
    const sumKg = total((baseline.equipment ?? []).map(({ massKg, armMm }) => atArm(massKg, armMm))).massKg;
    const difference = sumKg - baseline.emptyMassKg;
    if (isAtMost(Math.abs(difference), baseline.equipmentSumToleranceKg)) return undefined;
    const [differenceText, toleranceText] = figure.apart('mass', difference, baseline.equipmentSumToleranceKg, {
      signed: true,
    });
    return {
      path: ['baseline', 'equipment'],
      sentence: said(m.equipmentSumDiffers_itemsListAddUp, {
        count: results.change.before.length,
        sum: figure.measure('mass', sumKg),
        emptyMass: figure.measure('mass', baseline.emptyMassKg),
        difference: differenceText,
        equipmentSumTolerance: toleranceText,
      }),
      data: { sumKg, emptyKg: baseline.emptyMassKg, toleranceKg: baseline.equipmentSumToleranceKg },
    };
  },
};
