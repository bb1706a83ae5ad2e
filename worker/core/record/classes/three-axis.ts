import { type ClassData, ENGINE_AXES, GROUND_AXES, SURFACE_AXES } from './class-data.ts';

/**
 * Aeroplane with three axes of control.
 *
 * Read: that the empty mass has fixed ballast, unusable fuel and full fluids (former 14 CFR 23.29), and that an electric
 * type weighs with its batteries in (a flight manual, see the published cases). From memory: everything else.
 */
export const threeAxis: ClassData = {
  products: ['engine', 'motor', 'propeller', 'battery', 'rescue-system', 'floats'],
  axes: [...SURFACE_AXES, 'tow-release', ...ENGINE_AXES, ...GROUND_AXES, 'other'],
  flightAxes: ['ailerons', 'elevator', 'rudder'],
  canHaveFuel: true,
  canHaveOil: true,
  emptyShare: { from: 0.4, to: 0.8 },
  requires: { envelope: true, lateral: false },
  computes: [],
  cautions: [],
};
