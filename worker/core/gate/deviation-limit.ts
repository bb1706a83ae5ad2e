/** Limit of the deviation in level flight on any heading: 14 CFR 27.1327 and the former 23.1327 (read). */
export const DEVIATION_LIMIT_DEG = 10;
