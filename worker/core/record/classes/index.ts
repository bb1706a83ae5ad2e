import type { AircraftClass, UNSTATED_CLASS } from '../class.ts';
import { AXES } from '../control-check.ts';
import { PRODUCTS } from '../product.ts';
import type { ClassData } from './class-data.ts';
import { glider } from './glider.ts';
import { gyroplane } from './gyroplane.ts';
import { helicopter } from './helicopter.ts';
import { poweredParachute } from './powered-parachute.ts';
import { selfLaunchingGlider } from './self-launching-glider.ts';
import { threeAxis } from './three-axis.ts';
import { weightShift } from './weight-shift.ts';

export type { ClassData } from './class-data.ts';

const CLASS_DATA: Readonly<Record<AircraftClass, ClassData>> = {
  'three-axis': threeAxis,
  'weight-shift': weightShift,
  'powered-parachute': poweredParachute,
  glider,
  'self-launching-glider': selfLaunchingGlider,
  gyroplane,
  helicopter,
};

/** An aircraft whose record does not state its class: everything is possible, and the envelope is required, as before classes. */
const UNSTATED: ClassData = {
  products: PRODUCTS,
  axes: AXES,
  flightAxes: [],
  canHaveFuel: true,
  canHaveOil: true,
  emptyShare: { from: 0.3, to: 0.85 },
  requires: { envelope: true, lateral: false },
  computes: [],
  cautions: [],
};

/** Returns what follows from the class of an aircraft. */
export function classDataOf({ class: of }: { class: AircraftClass | typeof UNSTATED_CLASS }): ClassData {
  return of === 'unstated' ? UNSTATED : CLASS_DATA[of];
}
