import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RUNS } from '../../property-runs.ts';
import { anyVisit } from './any-visit.ts';
import { unprinted } from './unprinted.ts';

/** Fewer where the suite draws them again, in another language. */
const COUNT = Number(process.env.ANY_VISITS ?? 200);

// Thousands more: npx node tests/core/pack/print-any-visit.ts --seed 1 --count 20000
test('no visit is too large for its pack: any number of stations, any names, any units, papers and languages', async () => {
  await fc.assert(
    fc.asyncProperty(anyVisit, async (visit) => {
      expect((await unprinted(visit)).findings).toEqual([]);
    }),
    { ...RUNS, numRuns: COUNT, endOnFailure: true },
  );
}, 300_000);
