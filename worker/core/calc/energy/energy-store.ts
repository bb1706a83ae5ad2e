/** A battery that drives the aircraft, and how it is drawn on. Shares are 0 to 1. */
export interface EnergyStore {
  nominalKwh: number;
  /** State of health: share of the nominal energy that is left. */
  health: number;
  /** State of charge at the start, and the one below which nothing may be drawn. */
  chargeAtStart: number;
  chargeKept: number;
  /** Factor for the temperature of the cells. @default 1 */
  temperatureFactor?: number;
}

/** Standard uncertainties of the members of an `EnergyStore`; zero if left out. */
export type EnergyStandards = Partial<Record<keyof EnergyStore, number>>;

/** An energy with its standard uncertainty. */
export interface Energy {
  kwh: number;
  standardKwh: number;
}

/**
 * Returns the usable energy of a battery: E = E_n · h · (s_0 − s_1) · k.
 *
 * @returns kWh, negative if the charge is already below what must be kept
 * @source derived from the definitions of charge and health; checked by discharging in small steps, and Monte Carlo
 * @example usableEnergy({ nominalKwh: 22, health: 0.9, chargeAtStart: 1, chargeKept: 0.2 }).kwh  // 15.84
 */
export function usableEnergy(store: EnergyStore, standards: EnergyStandards = {}): Energy {
  const { nominalKwh, health, chargeAtStart, chargeKept, temperatureFactor = 1 } = store;
  const share = chargeAtStart - chargeKept;
  const fullKwh = nominalKwh * health * temperatureFactor;
  const standardKwh = Math.hypot(
    health * share * temperatureFactor * (standards.nominalKwh ?? 0),
    nominalKwh * share * temperatureFactor * (standards.health ?? 0),
    nominalKwh * health * share * (standards.temperatureFactor ?? 0),
    fullKwh * (standards.chargeAtStart ?? 0),
    fullKwh * (standards.chargeKept ?? 0),
  );
  return { kwh: fullKwh * share, standardKwh };
}

/** Power in flight, and the reserve that must be left at the end. */
export interface EnergyUse {
  powerKw: number;
  standardPowerKw?: number;
  reserveKw: number;
  reserveMin: number;
  standardReserveKw?: number;
}

/**
 * Returns how long an energy lasts above its reserve: t = (E − E_r) / P, with E_r = P_r · t_r.
 *
 * The mass does not change: the aircraft lands as heavy as it takes off.
 *
 * @returns reserve in kWh, endurance in minutes, negative if the reserve is not there; undefined without power
 * @source derived from the definition of power; checked by discharging in small steps, and Monte Carlo
 * @example energyEndurance({ kwh: 15.84, standardKwh: 0 }, { powerKw: 20, reserveKw: 20, reserveMin: 10 })  // 37.5 min
 */
export function energyEndurance(
  energy: Energy,
  use: EnergyUse,
): { reserveKwh: number; minutes: number; standardMin: number } | undefined {
  const { powerKw, standardPowerKw = 0, reserveKw, reserveMin, standardReserveKw = 0 } = use;
  if (!(powerKw > 0)) return undefined;
  const reserveKwh = (reserveKw * reserveMin) / 60;
  const minutes = (60 * (energy.kwh - reserveKwh)) / powerKw;
  const standardMin =
    Math.hypot(60 * energy.standardKwh, reserveMin * standardReserveKw, minutes * standardPowerKw) / powerKw;
  return { reserveKwh, minutes, standardMin };
}
