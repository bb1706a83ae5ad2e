/** Six numbers that map one plane to another (ISO 32000-1, 8.3.4). */
export type Matrix = readonly [number, number, number, number, number, number];
