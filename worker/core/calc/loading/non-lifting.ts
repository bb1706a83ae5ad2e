import type { PilotMass } from './cockpit-load.ts';

/**
 * Returns the max. pilot that the mass of the non-lifting parts allows: m_P = m_NL − Σ m.
 *
 * The manual decides which masses count: fuselage with equipment, tailplane, baggage, engine, and on some types the
 * battery or water in the fin.
 *
 * @param parts masses that count, with their standard uncertainties if known
 * @returns kg, negative if no pilot is allowed
 * @source derived from the definition in glider manuals, read: all but the wings; checked against one of them
 * @example mostPilotByNonLifting(254, [{ massKg: 130.6 }, { massKg: 6.3 }]).massKg  // 117.1
 */
export function mostPilotByNonLifting(
  maximumNonLiftingKg: number,
  parts: readonly { massKg: number; standardKg?: number }[],
): PilotMass {
  return {
    massKg: parts.reduce((left, { massKg }) => left - massKg, maximumNonLiftingKg),
    standardKg: Math.hypot(...parts.map(({ standardKg = 0 }) => standardKg)),
  };
}

/**
 * Returns the max. mass without water ballast: the non-lifting parts at their limit and the wings, up to the limit
 * without water if the manual states one.
 *
 * @returns kg
 * @source derived from the definition in glider manuals, read
 * @example dryMaximumKg({ maximumNonLiftingKg: 250, wingsKg: 140, limitKg: 380 })  // 380
 */
export function dryMaximumKg(given: { maximumNonLiftingKg: number; wingsKg: number; limitKg?: number }): number {
  return Math.min(given.maximumNonLiftingKg + given.wingsKg, given.limitKg ?? Number.POSITIVE_INFINITY);
}

/**
 * Returns the water ballast in the wings up to the maximum mass: maximum − empty − cockpit − fin.
 *
 * @param cockpitKg persons, baggage and fuel
 * @param finKg water and batteries in the fin
 * @returns kg, negative if the aircraft is too heavy without water; the tanks may take less
 * @source derived from the definition in a motor-glider manual, read
 * @example waterAllowedKg({ maximumKg: 600, emptyKg: 330, cockpitKg: 95, finKg: 8 })  // 167
 */
export function waterAllowedKg(given: {
  maximumKg: number;
  emptyKg: number;
  cockpitKg: number;
  finKg: number;
}): number {
  return given.maximumKg - given.emptyKg - given.cockpitKg - given.finKg;
}
