import type { Wiring } from '../../record/visit.ts';
import { isAtLeast } from '../numbers/limit-met.ts';

type NearControl = NonNullable<Wiring['nearControls']>[number];

/**
 * Distance of wiring from control cables below which a guard is wanted: 3 in, from memory. AC 43.13-1B 11-125, of which the copy
 * that was read breaks off, asks for clamps of which no single one may fail so that the wire reaches the control, and, from
 * memory, for half an inch with the wire pressed towards it.
 */
export const CONTROL_CLEARANCE_MM = 3 * 25.4;

/**
 * Whether wiring keeps off a control: secured, and far enough or guarded.
 *
 * @source AC 43.13-1B 11-125, read in part; the distance of 3 in from memory
 */
export function isClearOfControl({ distanceMm, isSecured, isGuarded }: NearControl): boolean {
  return isSecured && (isGuarded || isAtLeast(distanceMm, CONTROL_CLEARANCE_MM));
}
