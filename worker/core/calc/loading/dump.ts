import { lateralMomentKgMm } from '../mass/lateral-moment.ts';

/**
 * Returns how long water ballast takes to drain: t = V / q, with u(t) = t·u(q) / q.
 *
 * @param flowLPerS flow of the tank or of the side
 * @returns seconds; undefined without flow
 * @source derived from the definition of a flow; checked in small steps
 * @example dumpTime({ volumeL: 80, flowLPerS: 0.5, standardFlowLPerS: 0.1 })  // 160 s, standard 32 s
 */
export function dumpTime(given: {
  volumeL: number;
  flowLPerS: number;
  standardFlowLPerS?: number;
}): { seconds: number; standardS: number } | undefined {
  const { volumeL, flowLPerS, standardFlowLPerS = 0 } = given;
  if (!(flowLPerS > 0)) return undefined;
  const seconds = volumeL / flowLPerS;
  return { seconds, standardS: (seconds * standardFlowLPerS) / flowLPerS };
}

/** Water in both wings, and the side whose valve does not open. */
export interface WingWater {
  leftKg: number;
  rightKg: number;
  /** Distance of each content from the plane of symmetry, positive. */
  lateralMm: number;
  stuck?: 'left' | 'right';
}

/**
 * Returns the aircraft after its wing water is dumped: M_2 = M_1 − Δm, and with one side stuck Y = Δm·y_W / M_2.
 *
 * @param massKg with the water
 * @param restLateralMomentKgMm lateral moment of everything but the wing water, right positive
 * @returns mass in kg, lateral centre of gravity in mm, right positive; lateral undefined without a positive mass
 * @source derived from sums of moments; checked against a new balance
 * @example afterDump({ massKg: 600, water: { leftKg: 80, rightKg: 80, lateralMm: 2400, stuck: 'right' } })
 */
export function afterDump(given: { massKg: number; water: WingWater; restLateralMomentKgMm?: number }): {
  massKg: number;
  lateralMm: number | undefined;
} {
  const { massKg: fullKg, water, restLateralMomentKgMm = 0 } = given;
  const left = water.stuck === 'left' ? water.leftKg : 0;
  const right = water.stuck === 'right' ? water.rightKg : 0;
  const massKg = fullKg - (water.leftKg - left) - (water.rightKg - right);
  const lateralKgMm = lateralMomentKgMm([
    { massKg: left, lateralMm: -water.lateralMm },
    { massKg: right, lateralMm: water.lateralMm },
  ]);
  return { massKg, lateralMm: massKg > 0 ? (restLateralMomentKgMm + lateralKgMm) / massKg : undefined };
}
