import { classDataOf } from '../../record/classes/index.ts';
import type { Aircraft } from '../../record/visit.ts';

/**
 * Whether the aircraft can have oil: a class that never has, or an engine without a sump, cannot.
 *
 * @source common practice, no source
 */
export function hasOil(aircraft: Pick<Aircraft, 'class' | 'engine'>): boolean {
  return classDataOf(aircraft).canHaveOil && aircraft.engine !== undefined && aircraft.engine.hasOilSump !== false;
}
