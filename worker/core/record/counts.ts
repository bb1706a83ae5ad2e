import * as m from '../text/generated/messages.ts';

/** What is counted in whole numbers, in the order of print. */
export const COUNTS = ['landings', 'launches', 'cycles', 'starts'] as const;
export type Count = (typeof COUNTS)[number];
export const isCount = (text: string): text is Count => (COUNTS as readonly string[]).includes(text);

/** Every clock of a limit that is a number. */
export const NUMBER_CLOCKS = ['hours', ...COUNTS] as const;
export type NumberClock = (typeof NUMBER_CLOCKS)[number];

/** Message of a number of each count. */
export const COUNT_TEXTS = {
  landings: m.counts_landings,
  launches: m.counts_launches,
  cycles: m.counts_cycles,
  starts: m.counts_starts,
} as const;
