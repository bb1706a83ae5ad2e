import * as m from '../../text/generated/messages.ts';
import { type ClassData, ENGINE_AXES, GROUND_AXES } from './class-data.ts';

/**
 * Gyroplane.
 *
 * Read: the hang test (FAA rotorcraft handbook), weighing with the rotor head vertical and the ranges of seats (manuals, see
 * the published cases). From memory: the rest. No published hang angle with figures was found: a computation by another
 * method takes its place in the tests.
 */
export const gyroplane: ClassData = {
  products: ['rotor', 'rotor-head', 'engine', 'motor', 'propeller', 'battery'],
  axes: ['cyclic', 'pedals', 'rudder', 'trim', 'pre-rotator', 'rotor-brake', ...ENGINE_AXES, ...GROUND_AXES, 'other'],
  flightAxes: ['cyclic'],
  canHaveFuel: true,
  canHaveOil: true,
  emptyShare: { from: 0.4, to: 0.8 },
  requires: { envelope: false, lateral: false },
  computes: ['hang-angle'],
  cautions: [m.class_neverPushOver, m.class_clearOfRotor],
};
