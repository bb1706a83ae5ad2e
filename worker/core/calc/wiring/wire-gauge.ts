import type { Gauge } from '../../record/wire-size.ts';

/**
 * Returns the number of a gauge: 0 is 0, 00 is −1, 0000 is −3.
 *
 * @source ASTM B258, from memory
 */
export function gaugeNumber(gauge: Gauge): number {
  return gauge.startsWith('0') ? 1 - gauge.length : Number(gauge);
}

/**
 * Returns the diameter of a solid conductor in mm: d = 0.127 mm · 92^((36 − n) / 39).
 *
 * @source ASTM B258, from memory; agrees with a table that was read
 * @example diameterMm(22)  // 0.6438
 */
export function diameterMm(number: number): number {
  return 0.127 * 92 ** ((36 - number) / 39);
}

/**
 * Returns the area of a solid conductor in mm²: A = π d² / 4.
 *
 * @source area of a circle
 */
export function areaMm2(number: number): number {
  return (Math.PI / 4) * diameterMm(number) ** 2;
}

/**
 * Returns the area in circular mils: the square of the diameter in thousandths of an inch.
 *
 * @source definition of the circular mil
 */
export function circularMils(number: number): number {
  return (diameterMm(number) / 0.0254) ** 2;
}

/** Resistivity of annealed copper at 20 °C, in Ω·mm²/m: the International Annealed Copper Standard, 1/58. */
const COPPER_OHM_MM2_PER_M = 1 / 58;

/**
 * Returns the resistance of 1000 ft of solid copper at 20 °C, in ohms. Stranded aircraft wire differs: see the wire
 * table.
 *
 * @source International Annealed Copper Standard, from memory; agrees with a table that was read
 */
export function solidOhmPer1000Ft(number: number): number {
  return (COPPER_OHM_MM2_PER_M * 304.8) / areaMm2(number);
}
