import { armOn, type Envelope, envelopeOf, type LimitPiece } from './envelope.ts';

/** Corner of a lateral envelope; aft and right are positive. */
export interface LateralCorner {
  armMm: number;
  lateralMm: number;
}

/** A centre of gravity in plan; its uncertainty as in `LateralCg`. */
export interface PlanPlace {
  armMm: number;
  lateralMm: number;
  standardArmMm?: number;
  standardLateralMm?: number;
  covarianceMm2?: number;
}

/** Lateral limit at an arm, and the margin to it; negative outside. */
export interface LateralMargin {
  limitMm: number;
  marginMm: number;
  standardMm: number;
}

/**
 * Returns the margins of a centre of gravity to the left and right limits of a lateral envelope at its arm.
 *
 * A side of the polygon is y = p + q·x, so the margin is Y − p − q·X, with the sign changed on the right, and
 * u² = u²(Y) + q²·u²(X) − 2·q·cov(X, Y).
 *
 * @param corners polygon in arm and lateral distance; every arm crosses it twice; its sides may differ
 * @returns undefined if the arm is outside the polygon, or if the polygon is not valid
 * @source derived; uncertainty: JCGM 100:2008 (GUM), 5.2.2, from memory; checked against Monte Carlo
 */
export function lateralMargins(
  corners: readonly LateralCorner[],
  place: PlanPlace,
): { left: LateralMargin; right: LateralMargin } | undefined {
  const envelope = envelopeOf(corners.map(({ armMm, lateralMm }) => ({ armMm: lateralMm, massKg: armMm })));
  const [left, right] = envelope ? [pieceAt(envelope, 'forward', place), pieceAt(envelope, 'aft', place)] : [];
  return left && right ? { left: marginTo(left, place, 1), right: marginTo(right, place, -1) } : undefined;
}

/** `envelopeOf` splits a polygon by its second coordinate, here the arm: its lower side is the left one. */
function pieceAt(envelope: Envelope, side: 'forward' | 'aft', { armMm }: PlanPlace): LimitPiece | undefined {
  return envelope[side].find(({ fromKg, toKg }) => armMm >= fromKg && armMm <= toKg);
}

function marginTo(piece: LimitPiece, place: PlanPlace, sign: 1 | -1): LateralMargin {
  const { standardArmMm = 0, standardLateralMm = 0, covarianceMm2 = 0 } = place;
  const slope = (piece.toMm - piece.fromMm) / (piece.toKg - piece.fromKg);
  const limitMm = armOn(piece, place.armMm);
  const variance = standardLateralMm ** 2 + (slope * standardArmMm) ** 2 - 2 * slope * covarianceMm2;
  return { limitMm, marginMm: sign * (place.lateralMm - limitMm), standardMm: Math.sqrt(Math.max(0, variance)) };
}
