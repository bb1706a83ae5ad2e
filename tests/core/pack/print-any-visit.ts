import { parseArgs } from 'node:util';
import fc from 'fast-check';
import { anyVisit, unprinted } from './any-visit.ts';

// Prints packs of thousands of random visits and says which did not fit: npx node tests/core/pack/print-any-visit.ts --seed 1 --count 2000
const { values } = parseArgs({
  options: { seed: { type: 'string' }, count: { type: 'string' }, only: { type: 'string' } },
});
const [seed, count] = [Number(values.seed ?? 1), Number(values.count ?? 200)];
const visits = fc.sample(anyVisit, { seed, numRuns: count });
let [released, failed] = [0, 0];
for (const [index, visit] of visits.entries()) {
  if (values.only !== undefined && Number(values.only) !== index) continue;
  const { findings, wasReleased } = await unprinted(visit);
  if (wasReleased) released++;
  if (findings.length === 0) continue;
  failed++;
  console.log(`${index}: ${JSON.stringify(findings)}`);
}
console.log(`seed ${seed}: ${count} visits, ${released} of them released by the gate, ${failed} did not fit`);
process.exitCode = failed > 0 ? 1 : 0;
