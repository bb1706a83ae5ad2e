import * as m from '../text/generated/messages.ts';
import { arm, choice, distance, line, list, mass, number, part } from './field.ts';

const degrees = { min: -90, max: 90 };

/** A position of the hang point or of the attachment, and the masses for which it is meant. */
export const SuspensionPosition = part(
  'suspensionPosition',
  {
    name: line('suspensionPosition_name', 'Rear hole', 40),
    arm: arm('suspensionPosition_arm', 20, { of: m.item }).optional(),
    fromMass: mass('suspensionPosition_fromMass', 55).optional(),
    toMass: mass('suspensionPosition_toMass', 340).optional(),
    note: line('suspensionPosition_note', 'Solo only from the front seat').optional(),
  },
  'name',
);

/** Positions of hang point or attachment, in place of an envelope. */
export const Suspension = part('suspension', {
  by: choice('suspension_by', ['take-off-mass', 'occupants', 'front-occupant'] as const),
  positions: list('suspension_positions', SuspensionPosition, { min: 1, max: 20 }),
});

/** The bolt from which the aircraft hangs, and the permitted angle. */
export const HangBolt = part('hangBolt', {
  arm: arm('hangBolt_arm', 1850, { of: m.item }),
  minimumDeg: number('hangBolt_minimumDeg', '°', 6, degrees),
  maximumDeg: number('hangBolt_maximumDeg', '°', 11, degrees),
});

/** Attitude of the aircraft for weighing, from the manufacturer, and how far it may be off. */
export const LevelAttitude = part('levelAttitude', {
  longitudinalDeg: number('levelAttitude_longitudinalDeg', '°', -4, degrees),
  lateralDeg: number('levelAttitude_lateralDeg', '°', 0, degrees),
  toleranceDeg: number('levelAttitude_toleranceDeg', '°', 0.2, { min: 0, max: 10 }).optional(),
  source: line('levelAttitude_source', 'Maintenance manual 2.1: wedge 1000:52 on the tail cone'),
});

/** One hang test. */
export const HangTest = part('hangTest', {
  state: line('hangTest_state', 'Pilot 82 kg, tank full', 60),
  angleDeg: number('hangTest_angleDeg', '°', 8.4, degrees),
  angleLimitDeg: number('hangTest_angleLimitDeg', '°', 0.2, { min: 0, max: 10 }).optional(),
  mass: mass('hangTest_mass', 392).optional(),
  addedMass: mass('hangTest_addedMass', 20).optional(),
  addedAftOfBolt: distance('hangTest_addedAftOfBolt', 600).optional(),
  addedBelowBolt: distance('hangTest_addedBelowBolt', 900).optional(),
});
