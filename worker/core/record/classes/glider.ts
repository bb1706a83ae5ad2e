import * as m from '../../text/generated/messages.ts';
import { type ClassData, GROUND_AXES, SURFACE_AXES } from './class-data.ts';

/**
 * Glider without an engine.
 *
 * Read: min. cockpit load, ballast, water and non-lifting parts in flight and maintenance manuals (see the published
 * cases). From memory: which meters and cards are usual.
 */
export const glider: ClassData = {
  products: ['wing', 'battery', 'rescue-system'],
  axes: [...SURFACE_AXES, 'tow-release', 'dump-valve', ...GROUND_AXES, 'other'],
  flightAxes: ['ailerons', 'elevator', 'rudder', 'tow-release'],
  canHaveFuel: false,
  canHaveOil: false,
  emptyShare: { from: 0.4, to: 0.85 },
  requires: { envelope: true, lateral: false },
  computes: ['cockpit-load'],
  cautions: [m.class_leastCockpitLoad],
  waterCautions: [m.class_waterSymmetric],
};
