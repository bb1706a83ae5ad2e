import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const equipmentSumExceedsEmptyMass: Rule = {
  code: 'EQUIPMENT_SUM_EXCEEDS_EMPTY_MASS',
  severity: 'blocks',
  meaning: 'The mass of the equipment is more than the empty mass',
  remedy: m.equipmentSumExceedsEmptyMass_remedy,
  source: PRACTICE,
  check: ({ results }) => {
    const { schedule, change } = results;
    const sumKg = change.after.reduce((sum, { massKg }) => sum + massKg, 0);
    if (!schedule || isAtMost(sumKg, schedule.massKg) || change.after.length === 0) return undefined;
    const [sumText, massText] = figure.apart('mass', sumKg, schedule.massKg);
    return {
      path: ['baseline', 'equipment'],
      sentence: said(m.equipmentSumExceedsEmptyMass_equipmentAddsUpMore, { sum: sumText, mass: massText }),
      data: { sumKg, emptyKg: schedule.massKg },
    };
  },
};
