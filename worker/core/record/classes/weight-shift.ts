import * as m from '../../text/generated/messages.ts';
import { type ClassData, ENGINE_AXES, GROUND_AXES } from './class-data.ts';

/**
 * Weight-shift aircraft: a trike under a wing.
 *
 * Read: that it has no range of the centre of gravity, only a maximum mass, and that the hang point has limits on the keel
 * (FAA weight-shift handbook); that hang points go by mass (manuals, see the published cases). From memory: everything else.
 */
export const weightShift: ClassData = {
  products: ['wing', 'engine', 'motor', 'propeller', 'battery', 'rescue-system', 'floats'],
  axes: ['weight-shift', 'trim', ...ENGINE_AXES, ...GROUND_AXES, 'tow-release', 'other'],
  flightAxes: ['weight-shift'],
  canHaveFuel: true,
  canHaveOil: true,
  emptyShare: { from: 0.35, to: 0.65 },
  requires: { envelope: false, lateral: false },
  computes: ['hang-position'],
  cautions: [m.class_trikeMatchesWing, m.class_checkBattens],
};
