import * as m from '../../text/generated/messages.ts';
import { type ClassData, ENGINE_AXES, GROUND_AXES } from './class-data.ts';

/**
 * Powered parachute: a cart under a canopy.
 *
 * Read: that the attachment goes by the mass of the front occupant and the rear seat hardly counts, that steering bars pull
 * the trailing edge, and the cautions on hot engine and sunlight (FAA powered parachute handbook). From memory: the rest.
 */
export const poweredParachute: ClassData = {
  products: ['canopy', 'engine', 'motor', 'propeller', 'battery'],
  axes: ['canopy-steering', ...ENGINE_AXES, ...GROUND_AXES, 'other'],
  flightAxes: ['canopy-steering'],
  canHaveFuel: true,
  canHaveOil: true,
  emptyShare: { from: 0.3, to: 0.65 },
  requires: { envelope: false, lateral: false },
  computes: ['attachment'],
  cautions: [m.class_canopyMatchesMass, m.class_canopyHotEngine],
};
