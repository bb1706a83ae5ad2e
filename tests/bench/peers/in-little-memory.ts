import { execFileSync } from 'node:child_process';
import { join } from 'node:path';

/** Heaps that are tried, in MB, the least first: what the runtime itself takes is in them. */
const HEAPS_MB = [56, 64, 72, 80, 88, 96, 112, 128];

/** One sentence on the least heap in which a pack as large as the schema allows can be made, and what stands beside it. */
export function inLittleMemory(): string {
  for (const heapMb of HEAPS_MB) {
    try {
      const flags = [`--max-old-space-size=${heapMb}`, '--max-semi-space-size=2', '--expose-gc'];
      const args = [...flags, join(import.meta.dirname, 'large-pack.ts')];
      const out = execFileSync(process.execPath, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
      const { megabytes, heapBeforeMb, buffersMb } = JSON.parse(out) as Record<string, number>;
      return `The largest pack, some 190 pages with 20 photographs and a paper (${megabytes?.toFixed(1)} MB), needs ${(heapMb - (heapBeforeMb ?? 0)).toFixed(0)} MB of heap beyond the ${heapBeforeMb?.toFixed(0)} MB that Node and the modules hold before, and ${buffersMb?.toFixed(0)} MB of files beside it; a Worker has 128 MB for both and for its own code`;
    } catch {
      // Too little: the next.
    }
  }
  return `The largest pack is not made in a heap of ${HEAPS_MB.at(-1)} MB`;
}
