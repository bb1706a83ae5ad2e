import type { Influence } from '../weighing/uncertainty.ts';

/** A mass on board in addition to the empty aircraft and the pilot; negative if something is missing. */
export interface CockpitExtra {
  massKg: number;
  armMm: number;
  standardKg?: number;
  /** May be on board or not, such as fuel, tail water or a battery in the fin: the worse of both counts. */
  isOptional?: boolean;
}

/** An aircraft without its pilot, and what is known of it. */
export interface CockpitSeat {
  emptyKg: number;
  emptyMomentKgMm: number;
  /** Budget of the weighing: mass and moment come from the same readings, so they are not independent. */
  budget?: readonly Influence[];
  /** Arm of the pilot. */
  seatArmMm: number;
  standardSeatArmMm?: number;
}

/** A mass of the pilot with its standard uncertainty. */
export interface PilotMass {
  massKg: number;
  standardKg: number;
}

type Limited = CockpitSeat & { extras?: readonly CockpitExtra[]; limitArmMm: number };

/**
 * Returns the min. pilot that the aft limit allows: m_P = (S − x_a·m) / (x_a − x_P).
 *
 * S and m are without the pilot. They contain every optional mass aft of the limit, and none ahead of it: the pilot
 * must balance the worst state.
 *
 * u²(m_P) = (Σ ((∂S/∂q − x_a·∂m/∂q)·u)² + (m_P·u(x_P))²) / (x_a − x_P)²
 *
 * @returns kg, negative if the aircraft without pilot is ahead of the limit; undefined if the seat is not
 * @source derived; checked against brute force, Monte Carlo and the formulas of a motor-glider service manual, read
 * @example leastPilotByAftLimit({ emptyKg: 300, emptyMomentKgMm: 810_000, seatArmMm: 1460, limitArmMm: 2443 }).massKg
 *   // 78.4
 */
export function leastPilotByAftLimit(given: Limited): PilotMass | undefined {
  return pilotOnLimit(given, 1);
}

/**
 * Returns the max. pilot that the forward limit allows: m_P = (S − x_f·m) / (x_f − x_P).
 *
 * S and m are without the pilot. They contain every optional mass ahead of the limit, and none aft of it. So the
 * optional masses are never those of `leastPilotByAftLimit`. Uncertainty as there.
 *
 * @returns kg, negative if no pilot is allowed; undefined if the seat is not ahead of the limit
 * @source derived; checked against brute force, Monte Carlo and the formulas of a motor-glider service manual, read
 */
export function mostPilotByForwardLimit(given: Limited): PilotMass | undefined {
  return pilotOnLimit(given, -1);
}

/** @param worse sign of the moments about the limit that optional masses are counted with */
function pilotOnLimit(given: Limited, worse: 1 | -1): PilotMass | undefined {
  const { emptyKg, emptyMomentKgMm, budget = [], extras = [], limitArmMm, seatArmMm, standardSeatArmMm = 0 } = given;
  const leverMm = limitArmMm - seatArmMm;
  if (!(leverMm > 0)) return undefined;
  const aboard = extras.filter(
    ({ isOptional, massKg, armMm }) => !isOptional || worse * massKg * (armMm - limitArmMm) > 0,
  );
  const excessKgMm = aboard.reduce(
    (sum, { massKg, armMm }) => sum + massKg * (armMm - limitArmMm),
    emptyMomentKgMm - limitArmMm * emptyKg,
  );
  const massKg = excessKgMm / leverMm;
  const influences = [...budget, ...aboard.map(influenceOf)];
  const variance = influences.reduce(
    (sum, { standard, massSensitivity, momentSensitivity }) =>
      sum + ((momentSensitivity - limitArmMm * massSensitivity) * standard) ** 2,
    (massKg * standardSeatArmMm) ** 2,
  );
  return { massKg, standardKg: Math.sqrt(variance) / leverMm };
}

function influenceOf({ standardKg = 0, armMm }: CockpitExtra): Influence {
  return { standard: standardKg, massSensitivity: 1, momentSensitivity: armMm };
}
