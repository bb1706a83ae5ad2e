import type { Wiring } from '../../record/visit.ts';
import { isAtLeast } from '../numbers/limit-met.ts';

type NearControl = NonNullable<Wiring['nearControls']>[number];

/**
 * Distance of wiring from control cables below which a guard is required: 3 in, from memory. AC 43.13-1B 11-125, of
 * which the copy that was read breaks off, requires clamps whose single failure cannot let the wire reach the control,
 * and, from memory, half an inch with the wire pressed towards it.
 */
export const CONTROL_CLEARANCE_MM = 3 * 25.4;

/**
 * Whether wiring is clear of a control: secured, and far enough away or guarded.
 *
 * @source AC 43.13-1B 11-125, read in part; the distance of 3 in from memory
 */
export function isClearOfControl({ distanceMm, isSecured, isGuarded }: NearControl): boolean {
  return isSecured && (isGuarded || isAtLeast(distanceMm, CONTROL_CLEARANCE_MM));
}
