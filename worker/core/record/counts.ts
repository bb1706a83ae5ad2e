/** What is counted in whole numbers, in the order of print. */
export const COUNTS = ['landings', 'launches', 'cycles', 'starts'] as const;
export type Count = (typeof COUNTS)[number];
export const isCount = (text: string): text is Count => (COUNTS as readonly string[]).includes(text);

/** Every clock of a limit that is a number. */
export const NUMBER_CLOCKS = ['hours', ...COUNTS] as const;
export type NumberClock = (typeof NUMBER_CLOCKS)[number];
