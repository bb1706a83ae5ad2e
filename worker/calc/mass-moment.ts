/** A mass with its moment about the datum; masses add and moments add, arms do not. */
export interface MassMoment {
  massKg: number;
  momentKgMm: number;
}

export const NOTHING: MassMoment = { massKg: 0, momentKgMm: 0 };

/** A mass at an arm. */
export function atArm(massKg: number, armMm: number): MassMoment {
  return { massKg, momentKgMm: massKg * armMm };
}

/**
 * Totals of masses and moments.
 *
 * m = Σ mᵢ        M = Σ mᵢ·xᵢ        (FAA-H-8083-1B ch. 2)
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

/** Centre of gravity in mm aft of the datum: CG = M / m. NaN when there is no mass. */
export function cgMm({ massKg, momentKgMm }: MassMoment): number {
  return massKg === 0 ? Number.NaN : momentKgMm / massKg;
}

export function minus(a: MassMoment, b: MassMoment): MassMoment {
  return { massKg: a.massKg - b.massKg, momentKgMm: a.momentKgMm - b.momentKgMm };
}
