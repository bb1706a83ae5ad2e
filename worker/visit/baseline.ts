import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { EquipmentItem } from './equipment.ts';
import { arm, choice, id, line, list, mass, momentOfMass, part, pastDate } from './field.ts';

export const EmptyMassEntry = part('Empty-mass entry', 'One step of the running empty-mass history', {
  date: pastDate('Date', 'Day of the weighing or the change', '2023-04-18', m.baseline_stepEmptyMassHistory),
  reason: line('Reason', 'What was done', 'Weighed after repaint'),
  mass: mass('Empty mass', 'Empty mass after this step', 318.4),
  moment: momentOfMass('Empty moment', 'Empty moment after this step', 655_267),
});

export const Baseline = part(
  'Baseline',
  'The last weight schedule and equipment list: what the papers say before this visit',
  {
    source: choice('Source', 'Where these figures come from', ['previous-pack', 'schedule', 'maker'] as const),
    reference: line(
      'Reference',
      'Pack number, or the reference of the schedule it replaces',
      'Schedule 4 of 2023-04-18',
    ),
    date: pastDate('Date', 'Date of that schedule', '2023-04-18', m.baseline_baseline, 'BASELINE_IN_FUTURE'),
    basis: choice('Basis', 'Whether its empty mass was weighed or computed', ['weighed', 'computed'] as const),
    weighedOn: pastDate(
      'Weighed on',
      'Date of the last weighing behind it',
      '2023-04-18',
      m.baseline_weighingBehindBaseline,
    ).optional(),
    airframeSerial: line('Airframe serial', 'Airframe serial number in the papers', 'D2-0117', 60).optional(),
    engineSerial: line('Engine serial', 'Engine serial number in the papers', 'T4-2217', 60).optional(),
    propellerSerial: line('Propeller serial', 'Propeller serial number in the papers', 'PW-0882', 60).optional(),
    emptyMass: mass('Empty mass', 'Empty mass in the schedule', 318.4),
    emptyMassLimit: mass('Empty-mass limit', 'Expanded uncertainty (k = 2) of that mass, where stated', 0.6).optional(),
    emptyArm: arm('Empty arm', 'Empty centre of gravity in the schedule; give this or the moment', 2058, {
      of: m.baseline_baseline2,
    }).optional(),
    emptyMoment: momentOfMass(
      'Empty moment',
      'Empty moment in the schedule; used in preference to the arm',
      655_267,
    ).optional(),
    equipment: list('Equipment list', 'The equipment list that goes with the schedule', EquipmentItem, {
      max: 500,
    }).optional(),
    equipmentSumTolerance: mass(
      'Equipment sum tolerance',
      'Stated where the list is complete, bare airframe included: greatest difference between its sum and the empty mass',
      2,
    ).optional(),
    equipmentRevision: id('Equipment list revision', 'Revision of that list', '4').optional(),
    history: list('History', 'Running empty-mass history up to this schedule, oldest first', EmptyMassEntry, {
      max: 200,
    }).optional(),
  },
);
export type Baseline = z.infer<typeof Baseline>;
