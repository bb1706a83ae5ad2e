import type { Parameters } from 'fast-check';

/** How property tests run: from one seed, so that a run can be repeated; `SEED=…` looks elsewhere. */
export const RUNS: Parameters<unknown> = { seed: Number(process.env.SEED ?? 20_261_105), numRuns: 100 };
