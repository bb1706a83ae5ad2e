import { read } from './source.ts';

/** Longest usual time, in years, from the calibration of a scale to its use. */
export const CALIBRATION_YEARS = 2;

export const CALIBRATION_SOURCE = read(
  'AMC1 SPO.POL.105(b): scales calibrated within two years; taken here as a parallel',
);
