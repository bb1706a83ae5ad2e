/** Printed where a value is missing. */
export const DASH = '–';
