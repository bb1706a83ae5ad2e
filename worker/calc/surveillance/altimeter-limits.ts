import { interpolate } from '../interpolate.ts';

/** 14 CFR 43 Appendix E, Table I: altitude in ft and tolerance of the scale error in ft. */
const SCALE_TOLERANCE: readonly (readonly [altitudeFt: number, toleranceFt: number])[] = [
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

/** Tolerance in ft of the scale error at an altitude; linear between the rows of the table. */
export function scaleToleranceFt(altitudeFt: number): number {
  return interpolate(
    SCALE_TOLERANCE,
    altitudeFt,
    (row) => row[0],
    (row) => row[1],
  );
}

/** Greatest difference in ft between encoder and altimeter: 14 CFR 43 Appendix E (c), and 91.217. */
export const ENCODER_TOLERANCE_FT = 125;
/** Appendix E, Table II. */
export const CASE_LEAK_LIMIT_FT = 100;
export const AFTER_EFFECT_LIMIT_FT = 30;
