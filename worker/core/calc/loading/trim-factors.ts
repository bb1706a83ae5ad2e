/**
 * Returns by how much a mass changes the min. pilot of the aft limit, per kg: (x − x_a) / (x_a − x_P).
 *
 * @param given arms of the mass, of the aft limit and of the pilot, who sits ahead of the limit
 * @returns kg of pilot per kg: negative ahead of the limit, as a nose weight; positive aft of it, as tail water
 * @source derived from leastPilotByAftLimit(); checked against it
 * @example trimFactor({ massArmMm: 4215, limitArmMm: 387, seatArmMm: -410 })  // 4.8
 */
export function trimFactor(given: { massArmMm: number; limitArmMm: number; seatArmMm: number }): number {
  const { massArmMm, limitArmMm, seatArmMm } = given;
  return (massArmMm - limitArmMm) / (limitArmMm - seatArmMm);
}

/**
 * Returns the min. pilot with masses of which the manual states the factor: m_P = m_0 + Σ f·m.
 *
 * @param basicKg min. pilot without these masses
 * @param masses with kg of pilot per kg, negative for a nose weight
 * @returns kg
 * @source derived from the use in a glider maintenance manual, read; checked against its example
 * @example trimmedPilotKg(75, [{ massKg: 4, factor: 4.8 }])  // 94.2
 */
export function trimmedPilotKg(basicKg: number, masses: readonly { massKg: number; factor: number }[]): number {
  return masses.reduce((sum, { massKg, factor }) => sum + massKg * factor, basicKg);
}
