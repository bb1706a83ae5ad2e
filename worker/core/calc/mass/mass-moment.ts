import type { MassMoment } from './mass-result.ts';

export type { MassMoment } from './mass-result.ts';

export const NOTHING: MassMoment = { massKg: 0, momentKgMm: 0 };

/**
 * Returns mass and moment of a mass at an arm.
 *
 * @source definition of a moment
 */
export function atArm(massKg: number, armMm: number): MassMoment {
  return { massKg, momentKgMm: massKg * armMm };
}

/**
 * Sums masses and moments.
 *
 * m = Σ mᵢ        M = Σ mᵢ·xᵢ
 *
 * @source worked examples of AC 43.13-1B chapter 10, read
 */
export function total(parts: readonly MassMoment[]): MassMoment {
  let massKg = 0;
  let momentKgMm = 0;
  for (const part of parts) {
    massKg += part.massKg;
    momentKgMm += part.momentKgMm;
  }
  return { massKg, momentKgMm };
}

/**
 * Returns the centre of gravity in mm aft of the datum: CG = M / m.
 *
 * @returns not finite without mass: check `hasMass` first
 * @source worked examples of AC 43.13-1B chapter 10, read
 * @example cgMm({ massKg: 400, momentKgMm: 880_000 })  // 2200
 */
export function cgMm({ massKg, momentKgMm }: MassMoment): number {
  return massKg === 0 ? Number.NaN : momentKgMm / massKg;
}

/** A gram: an aircraft is never lighter, and the centre of gravity of less is noise. */
const MIN_KG = 0.001;

/** Whether any mass is left that has a centre of gravity; tare or removals may exceed it. */
export function hasMass({ massKg }: MassMoment): boolean {
  return massKg >= MIN_KG;
}

/**
 * Subtracts masses and moments.
 *
 * @source definition
 */
export function minus(a: MassMoment, b: MassMoment): MassMoment {
  return { massKg: a.massKg - b.massKg, momentKgMm: a.momentKgMm - b.momentKgMm };
}
