import * as m from '../../text/generated/messages.ts';
import { type ClassData, ENGINE_AXES } from './class-data.ts';
import { glider } from './glider.ts';

/**
 * Glider with its own engine or motor.
 *
 * Read: what the mass of the non-lifting parts includes, and how an extended engine moves the centre of gravity (flight
 * manuals, see the published cases). From memory: the rest.
 */
export const selfLaunchingGlider: ClassData = {
  ...glider,
  products: ['engine', 'motor', 'propeller', ...glider.products],
  axes: [...glider.axes, ...ENGINE_AXES],
  canHaveFuel: true,
  canHaveOil: true,
  cautions: [...glider.cautions, m.class_failedStartCostsHeight],
  waterCautions: glider.waterCautions ?? [],
};
