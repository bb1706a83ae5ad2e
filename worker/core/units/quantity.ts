/**
 * Quantities that a record measures in its own units, and their calculation units: kg, mm, l and combinations of them.
 * Exact factors, no rounding.
 */
export const MASS_UNITS = ['kg', 'lb'] as const;
export const ARM_UNITS = ['mm', 'cm', 'm', 'in'] as const;
export const VOLUME_UNITS = ['l', 'usgal', 'impgal'] as const;

export interface Units {
  mass: (typeof MASS_UNITS)[number];
  arm: (typeof ARM_UNITS)[number];
  volume: (typeof VOLUME_UNITS)[number];
}

// Kilograms per <unit>. International yard and pound agreement, 1959 (exact); NIST SP 811 App. B.8.
const KILOGRAMS_PER = { kg: 1, lb: 0.45359237 } as const;

// Millimetres per <unit>. The inch is 25.4 mm exactly (same agreement).
const MILLIMETRES_PER = { mm: 1, cm: 10, m: 1000, in: 25.4 } as const;

// Litres per <unit>. US gallon 231 in³ (exact); imperial gallon 4.54609 l (UK Weights and Measures Act 1985).
const LITRES_PER = { l: 1, usgal: 3.785411784, impgal: 4.54609 } as const;

/** Suffix of the field names of each quantity in calculation units. */
export const QUANTITY_SUFFIX = {
  mass: 'Kg',
  arm: 'Mm',
  moment: 'KgMm',
  volume: 'L',
  density: 'KgPerL',
  flow: 'LPerH',
} as const;

export type Quantity = keyof typeof QUANTITY_SUFFIX;

/**
 * Returns calculation units per record unit of a quantity.
 *
 * @source international yard and pound agreement, 1959; NIST SP 811, appendix B.8, read as restated
 * @example factorOf('moment', { mass: 'lb', arm: 'in', volume: 'usgal' })  // 11.521246198 kg·mm per lb·in
 */
export function factorOf(quantity: Quantity, units: Units): number {
  const kg = KILOGRAMS_PER[units.mass];
  const mm = MILLIMETRES_PER[units.arm];
  const litres = LITRES_PER[units.volume];
  const factors: Record<Quantity, number> = {
    mass: kg,
    arm: mm,
    moment: kg * mm,
    volume: litres,
    density: kg / litres,
    flow: litres,
  };
  return factors[quantity];
}

/** Returns the units of the other system, for readers used to them. */
export function otherUnits({ mass, arm, volume }: Units): Units {
  return {
    mass: mass === 'kg' ? 'lb' : 'kg',
    arm: arm === 'in' ? 'mm' : 'in',
    volume: volume === 'l' ? 'usgal' : 'l',
  };
}

const PRINTED = {
  kg: 'kg',
  lb: 'lb',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  l: 'l',
  usgal: 'US gal',
  impgal: 'imp gal',
} as const;

/**
 * Returns the printed unit of a quantity.
 *
 * @example unitOf('moment', { mass: 'lb', arm: 'in', volume: 'usgal' })  // 'lb·in'
 */
export function unitOf(quantity: Quantity, units: Units): string {
  const names: Record<Quantity, string> = {
    mass: PRINTED[units.mass],
    arm: PRINTED[units.arm],
    moment: `${PRINTED[units.mass]}·${PRINTED[units.arm]}`,
    volume: PRINTED[units.volume],
    density: `${PRINTED[units.mass]}/${PRINTED[units.volume]}`,
    flow: `${PRINTED[units.volume]}/h`,
  };
  return names[quantity];
}
