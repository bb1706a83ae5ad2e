import { type MassMoment, minus } from '../../mass/mass-moment.ts';
import { COVERAGE_FACTOR } from '../uncertainty.ts';
import type { Cause } from './causes-result.ts';
import { CHI_SQUARE_95, type Covariance, chiSquareOf, fitAlong } from './covariance.ts';

/** The mismatch to explain: weighed less predicted, and its covariance. */
export interface Mismatch {
  residual: MassMoment;
  covariance: Covariance;
}

type Named = Pick<Cause, 'kind'> & Partial<Cause>;

const NO_FIGURES = {
  of: undefined,
  and: undefined,
  run: undefined,
  massKg: undefined,
  limitKg: undefined,
  volumeL: undefined,
  limitL: undefined,
  recorded: undefined,
  angleDeg: undefined,
} as const;

/** Builds a cause from the figures that it has. */
export function causeOf(named: Named, chiSquare: number): Cause {
  return { ...NO_FIGURES, ...named, chiSquare };
}

/** Returns a cause whose effect on the weighing is known, if it explains the mismatch and most of it. */
export function fixedCause({ residual, covariance }: Mismatch, effect: MassMoment, named: Named): Cause[] {
  const chiSquare = chiSquareOf(covariance, minus(residual, effect));
  const isBetter = chiSquare <= chiSquareOf(covariance, residual) / 2;
  return isBetter && chiSquare <= CHI_SQUARE_95.two ? [causeOf(named, chiSquare)] : [];
}

/**
 * Returns a mass of unknown size at a known arm as a cause, if it explains the mismatch and lies between two bounds
 * within its uncertainty.
 */
export function massCause(
  { residual, covariance }: Mismatch,
  armMm: number,
  [fromKg, toKg]: readonly [fromKg: number, toKg: number],
  named: Named,
): Cause[] {
  const { size, standard, chiSquare } = fitAlong(covariance, residual, { massKg: 1, momentKgMm: armMm });
  const limitKg = COVERAGE_FACTOR * standard;
  const isPossible = size >= fromKg - limitKg && size <= toKg + limitKg && Math.abs(size) > limitKg;
  return isPossible && chiSquare <= CHI_SQUARE_95.one ? [causeOf({ ...named, massKg: size, limitKg }, chiSquare)] : [];
}
