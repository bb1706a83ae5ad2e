import * as m from '../../text/generated/messages.ts';
import { type ClassData, ENGINE_AXES } from './class-data.ts';

/**
 * Helicopter.
 *
 * Read: limits of mass and of both axes (14 CFR 27.25, 27.27), fluids of the empty mass (27.29), products with a record
 * (14 CFR 43.15(b)), balance at zero fuel and mission fuel (manuals, see the published cases). From memory: the rest.
 */
export const helicopter: ClassData = {
  products: ['engine', 'motor', 'rotor', 'rotor-head', 'tail-rotor', 'gearbox', 'battery', 'floats'],
  axes: [
    ...(['collective', 'cyclic', 'pedals', 'trim', 'rotor-brake', 'wheel-brake', 'landing-gear'] as const),
    ...ENGINE_AXES,
    'other',
  ],
  flightAxes: ['cyclic', 'collective', 'pedals'],
  canHaveFuel: true,
  canHaveOil: true,
  emptyShare: { from: 0.4, to: 0.8 },
  requires: { envelope: true, lateral: true },
  computes: ['both-axes'],
  cautions: [m.class_checkZeroFuel, m.class_clearOfBothRotors],
};
