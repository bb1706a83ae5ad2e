// Node script, started by peers.ts in a process of its own: measure.ts MODULE PAGES RUNS. Prints one line of JSON.
import type { Maker } from './maker.ts';

/** What making the document costs. `coldMs` runs from the start of the process to the first document. */
export interface Cost {
  coldMs: number;
  warmMs: number;
  cpuMs: number;
  peakMb: number;
  kilobytes: number;
}

const WARM_UPS = 6;

const [module = '', pages, runs] = [process.argv[2], Number(process.argv[3]), Number(process.argv[4])];
const { maker } = (await import(module)) as { maker: Maker };
const { length } = await maker.make(pages);
const coldMs = performance.now();
for (let run = 0; run < Math.min(WARM_UPS, runs); run++) await maker.make(pages);
const times: number[] = [];
const cpu = process.cpuUsage();
for (let run = 0; run < runs; run++) {
  const start = performance.now();
  await maker.make(pages);
  times.push(performance.now() - start);
}
const { user, system } = process.cpuUsage(cpu);
const warmMs = times.toSorted((a, b) => a - b)[Math.floor(runs / 2)] ?? 0;
const cost: Cost = {
  coldMs,
  warmMs,
  cpuMs: (user + system) / 1000 / runs,
  peakMb: process.resourceUsage().maxRSS / 1024,
  kilobytes: length / 1000,
};
process.stdout.write(`${JSON.stringify(cost)}\n`);
await maker.close?.();
