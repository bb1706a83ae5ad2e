import { interpolate } from '../numbers/interpolate.ts';

type Row = readonly [altitudeFt: number, toleranceFt: number];

/** 14 CFR 43 Appendix E, Table I: altitude in ft and tolerance of the scale error in ft. */
const SCALE_TOLERANCE: readonly Row[] = [
  [-1000, 20],
  [0, 20],
  [500, 20],
  [1000, 20],
  [1500, 25],
  [2000, 30],
  [3000, 30],
  [4000, 35],
  [6000, 40],
  [8000, 60],
  [10_000, 80],
  [12_000, 90],
  [14_000, 100],
  [16_000, 110],
  [18_000, 120],
  [20_000, 130],
  [22_000, 140],
  [25_000, 155],
  [30_000, 180],
  [35_000, 205],
  [40_000, 230],
  [45_000, 255],
  [50_000, 280],
];

/** 14 CFR 43 Appendix E, Table III: altitude in ft and tolerance of the friction in ft. */
const FRICTION_TOLERANCE: readonly Row[] = [
  [1000, 70],
  [2000, 70],
  [3000, 70],
  [5000, 70],
  [10_000, 80],
  [15_000, 90],
  [20_000, 100],
  [25_000, 120],
  [30_000, 140],
  [35_000, 160],
  [40_000, 180],
  [50_000, 250],
];

/** 14 CFR 43 Appendix E, Table IV: pressure set, in inches of mercury, and difference of the reading in ft. */
const BAROMETRIC_DIFFERENCE: readonly (readonly [settingInHg: number, differenceFt: number])[] = [
  [28.1, -1727],
  [28.5, -1340],
  [29, -863],
  [29.5, -392],
  [29.92, 0],
  [30.5, 531],
  [30.9, 893],
  [30.99, 974],
];

/** Pressure of a conventional inch of mercury: NIST SP 811, appendix B.8. */
const INCH_OF_MERCURY_HPA = 33.863_89;

/** Returns the altitudes of Table I at which an altimeter is read in a test up to a maximum. */
export function scaleAltitudesFt(maximumFt: number): number[] {
  return SCALE_TOLERANCE.map(([altitudeFt]) => altitudeFt).filter((altitudeFt) => altitudeFt <= maximumFt);
}

/** Returns the altitudes of Table III at which the friction of an altimeter is read in a test up to a maximum. */
export function frictionAltitudesFt(maximumFt: number): number[] {
  return FRICTION_TOLERANCE.map(([altitudeFt]) => altitudeFt).filter((altitudeFt) => altitudeFt <= maximumFt);
}

/** Returns the pressures of Table IV within a scale, with its ends in any order. */
export function barometricSettingsHpa({ fromHpa, toHpa }: { fromHpa: number; toHpa: number }): number[] {
  const [lowest, highest] = [Math.min(fromHpa, toHpa), Math.max(fromHpa, toHpa)];
  return BAROMETRIC_DIFFERENCE.map(([settingInHg]) => settingInHg * INCH_OF_MERCURY_HPA).filter(
    (settingHpa) => settingHpa >= lowest && settingHpa <= highest,
  );
}

/**
 * Returns the tolerance in ft of the scale error at an altitude; linear between the rows of the table.
 *
 * @source 14 CFR 43 Appendix E, table I, read
 */
export function scaleToleranceFt(altitudeFt: number): number {
  return between(SCALE_TOLERANCE, altitudeFt);
}

/**
 * Returns the tolerance in ft of the friction at an altitude; linear between the rows of the table, constant outside
 * them.
 *
 * @source 14 CFR 43 Appendix E, table III, read
 */
export function frictionToleranceFt(altitudeFt: number): number {
  return between(FRICTION_TOLERANCE, altitudeFt);
}

/**
 * Returns the change in ft of the reading between 29.92 inches of mercury and a pressure in hPa. Linear between the
 * rows of the table, which deviates from the curve of the standard atmosphere by up to 1.2 ft.
 *
 * @source 14 CFR 43 Appendix E, table IV, read; inch of mercury: NIST SP 811, appendix B.8
 */
export function barometricDifferenceFt(settingHpa: number): number {
  return between(BAROMETRIC_DIFFERENCE, settingHpa / INCH_OF_MERCURY_HPA);
}

function between(table: readonly (readonly [number, number])[], x: number): number {
  return interpolate(
    table,
    x,
    (row) => row[0],
    (row) => row[1],
  );
}

/** Max. difference in ft between encoder and altimeter: 14 CFR 43 Appendix E (c), and 91.217. */
export const ENCODER_TOLERANCE_FT = 125;
/** Appendix E, Table II. */
export const CASE_LEAK_LIMIT_FT = 100;
export const HYSTERESIS_TOLERANCE_FT = 75;
export const AFTER_EFFECT_LIMIT_FT = 30;
/** Appendix E (b)(1)(vi). */
export const BAROMETRIC_TOLERANCE_FT = 25;
/** 14 CFR 23.1325(b)(2)(i), before 2017: loss in one minute of a system that is not pressurised. */
export const STATIC_LEAK_LIMIT_FT = 100;
/** There too: raised by 1,000 ft or by about 1 inch of mercury, which is 925 ft at sea level. */
export const STATIC_RAISED_LEAST_FT = 900;
