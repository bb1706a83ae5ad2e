import { parseArgs } from 'node:util';
import fc from 'fast-check';
import { archivalDefects } from '../print/archival/checks.ts';
import { anyVisit } from './any-visit.ts';
import { unprinted } from './unprinted.ts';

// Prints packs of thousands of random visits and says which did not fit: npx node tests/core/pack/print-any-visit.ts --seed 1 --count 20000
// With --archival it also holds every pack against the clauses of PDF/A and PDF/UA, which takes as long again.
const { values } = parseArgs({
  options: {
    seed: { type: 'string' },
    count: { type: 'string' },
    only: { type: 'string' },
    archival: { type: 'boolean' },
  },
});
const [seed, count] = [Number(values.seed ?? 1), Number(values.count ?? 200)];
/** Visits drawn at a time: twenty thousand at once would not fit into memory. */
const DRAWN = 100;
let [released, failed] = [0, 0];
for (let first = 0; first < count; first += DRAWN) {
  const size = Math.min(DRAWN, count - first);
  if (values.only !== undefined && !(Number(values.only) >= first && Number(values.only) < first + size)) continue;
  for (const [step, visit] of fc.sample(anyVisit, { seed: seed * 1_000_000 + first, numRuns: DRAWN }).entries()) {
    const index = first + step;
    if (step >= size || (values.only !== undefined && Number(values.only) !== index)) continue;
    try {
      const { findings, wasReleased, pdf } = await unprinted(visit);
      if (wasReleased) released++;
      const defects = values.archival && findings.length === 0 ? await archivalDefects(pdf) : {};
      if (findings.length === 0 && Object.keys(defects).length === 0) continue;
      console.log(`${index}: ${JSON.stringify([...findings, defects])}`);
    } catch (error) {
      console.log(`${index}: ${error instanceof Error ? error.stack : String(error)}`);
    }
    failed++;
  }
}
console.log(`seed ${seed}: ${count} visits, ${released} of them released by the gate, ${failed} did not fit`);
process.exitCode = failed > 0 ? 1 : 0;
