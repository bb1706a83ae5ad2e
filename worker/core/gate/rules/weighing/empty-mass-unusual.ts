import { classDataOf } from '../../../record/classes/index.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { askingUnit, meantUnit } from '../../meant-unit.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { isInRange } from '../../within.ts';

export const emptyMassUnusual: Rule = {
  code: 'EMPTY_MASS_UNUSUAL',
  severity: 'caution',
  meaning: 'The empty mass is an unusual share of the maximum mass for the class',
  remedy: m.emptyMassUnusual_remedy,
  source: PRACTICE,
  check: ({ visit, results: { schedule } }) => {
    if (!schedule) return undefined;
    const { aircraft, units } = visit;
    const { emptyShare } = classDataOf(aircraft);
    const { maximumMassKg } = aircraft;
    const isUsual = (massKg: number): boolean => isInRange(massKg / maximumMassKg, emptyShare);
    if (isUsual(schedule.massKg)) return undefined;
    const sentence = said(m.emptyMassUnusual_share, {
      mass: figure.measure('mass', schedule.massKg),
      share: figure.plain((100 * schedule.massKg) / maximumMassKg, 0),
      maximum: figure.measure('mass', maximumMassKg),
      from: figure.asIs(100 * emptyShare.from),
      to: figure.asIs(100 * emptyShare.to),
      of: termOf(aircraft.class),
    });
    return {
      path: ['aircraft', 'maximumMass'],
      sentence: askingUnit(sentence, meantUnit('mass', schedule.massKg, units, isUsual)),
      data: { emptyKg: schedule.massKg, maximumKg: maximumMassKg, ...emptyShare },
    };
  },
};
