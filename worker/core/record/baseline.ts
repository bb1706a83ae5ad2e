import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { EquipmentItem } from './equipment.ts';
import { arm, choice, distance, id, line, list, mass, momentOfMass, part, pastDate, reference } from './field.ts';

export const EmptyMassEntry = part('emptyMassEntry', {
  date: pastDate('emptyMassEntry_date', '2023-04-18', m.baseline_stepEmptyMassHistory, { before: ['baseline.date'] }),
  reason: line('emptyMassEntry_reason', 'Weighed after repaint'),
  mass: mass('emptyMassEntry_mass', 318.4),
  moment: momentOfMass('emptyMassEntry_moment', 655_267),
  lateralMoment: momentOfMass('emptyMassEntry_lateralMoment', 640).optional(),
});

const Empty = {
  emptyMass: mass('baseline_emptyMass', 318.4),
  emptyMassLimit: mass('baseline_emptyMassLimit', 0.6).optional(),
  emptyArm: arm('baseline_emptyArm', 2058, {
    of: m.baseline_baseline2,
  }).optional(),
  emptyArmLimit: distance('baseline_emptyArmLimit', 1.6, { min: 0 }).optional(),
  emptyMoment: momentOfMass('baseline_emptyMoment', 655_267).optional(),
  emptyLateralArm: distance('baseline_emptyLateralArm', 2).optional(),
  emptyLateralMoment: momentOfMass('baseline_emptyLateralMoment', 640).optional(),
};

/** A valid schedule of another configuration, in addition to the baseline. */
export const StandingSchedule = part('standingSchedule', {
  configuration: reference('configuration', 'standingSchedule_configuration', 'wheels'),
  reference: line('baseline_reference', 'Schedule 4 of 2023-04-18'),
  date: pastDate('baseline_date', '2023-04-18', m.baseline_baseline),
  basis: choice('baseline_basis', ['weighed', 'computed'] as const),
  weighedOn: pastDate('baseline_weighedOn', '2023-04-18', m.baseline_weighingBehindBaseline, {
    before: ['date'],
  }).optional(),
  ...Empty,
});

export const Baseline = part('baseline', {
  source: choice('baseline_source', ['previous-pack', 'schedule', 'maker'] as const),
  reference: line('baseline_reference', 'Schedule 4 of 2023-04-18'),
  date: pastDate('baseline_date', '2023-04-18', m.baseline_baseline, {
    code: 'BASELINE_IN_FUTURE',
  }),
  basis: choice('baseline_basis', ['weighed', 'computed'] as const),
  weighedOn: pastDate('baseline_weighedOn', '2023-04-18', m.baseline_weighingBehindBaseline, {
    before: ['date'],
  }).optional(),
  airframeSerial: line('baseline_airframeSerial', 'D2-0117', 60).optional(),
  engineSerial: line('baseline_engineSerial', 'T4-2217', 60).optional(),
  propellerSerial: line('baseline_propellerSerial', 'PW-0882', 60).optional(),
  configuration: reference('configuration', 'baseline_configuration', 'wheels').optional(),
  ...Empty,
  schedules: list('baseline_schedules', StandingSchedule, { max: 8 }).optional(),
  equipment: list('baseline_equipment', EquipmentItem, {
    max: 500,
  }).optional(),
  equipmentSumTolerance: mass('baseline_equipmentSumTolerance', 2).optional(),
  equipmentRevision: id('baseline_equipmentRevision', '4').optional(),
  history: list('baseline_history', EmptyMassEntry, {
    max: 200,
  }).optional(),
});
export type Baseline = z.infer<typeof Baseline>;
