import type { MassMoment } from '../../mass/mass-moment.ts';
import type { Influence } from '../uncertainty.ts';

/** Variances of mass and moment in kg² and (kg·mm)², and their covariance. */
export interface Covariance {
  mm: number;
  mM: number;
  MM: number;
}

/** 95 % of the chi-square distribution with one and with two degrees of freedom. */
export const CHI_SQUARE_95 = { one: 3.84, two: 5.99 } as const;

/**
 * Returns the covariance of mass and moment from independent influences.
 *
 * @source JCGM 100:2008 (GUM), 5.1.2, read in NIST/SEMATECH 2.5.7
 */
export function covarianceOf(influences: readonly Influence[]): Covariance {
  const sum: Covariance = { mm: 0, mM: 0, MM: 0 };
  for (const { standard, massSensitivity, momentSensitivity } of influences) {
    const [mass, moment] = [massSensitivity * standard, momentSensitivity * standard];
    sum.mm += mass * mass;
    sum.mM += mass * moment;
    sum.MM += moment * moment;
  }
  return sum;
}

const determinant = ({ mm, mM, MM }: Covariance): number => mm * MM - mM * mM;

/** Whether mass and moment both have an uncertainty, so that a mismatch has a measure. */
export function isRegular(covariance: Covariance): boolean {
  return determinant(covariance) > 1e-9 * covariance.mm * covariance.MM;
}

/** The product a·V⁻¹·b. */
function product(covariance: Covariance, a: MassMoment, b: MassMoment): number {
  const { mm, mM, MM } = covariance;
  const cross = a.massKg * b.momentKgMm + a.momentKgMm * b.massKg;
  return (MM * a.massKg * b.massKg - mM * cross + mm * a.momentKgMm * b.momentKgMm) / determinant(covariance);
}

/**
 * Returns how far a mismatch of mass and moment is from zero: χ² = r·V⁻¹·r.
 *
 * @source definition; thresholds of the chi-square distribution from memory
 */
export function chiSquareOf(covariance: Covariance, mismatch: MassMoment): number {
  return product(covariance, mismatch, mismatch);
}

/** Size of a cause along its direction, its standard uncertainty, and what stays unexplained. */
export interface Fit {
  size: number;
  standard: number;
  chiSquare: number;
}

/**
 * Fits the size of a cause whose direction is known: s = d·V⁻¹·r / d·V⁻¹·d, u(s) = 1 / √(d·V⁻¹·d).
 *
 * @source generalised regression, from memory
 */
export function fitAlong(covariance: Covariance, mismatch: MassMoment, direction: MassMoment): Fit {
  const weight = product(covariance, direction, direction);
  const size = product(covariance, direction, mismatch) / weight;
  const rest = {
    massKg: mismatch.massKg - size * direction.massKg,
    momentKgMm: mismatch.momentKgMm - size * direction.momentKgMm,
  };
  return { size, standard: 1 / Math.sqrt(weight), chiSquare: chiSquareOf(covariance, rest) };
}
