/** Printed for a missing value. */
export const DASH = '–';
