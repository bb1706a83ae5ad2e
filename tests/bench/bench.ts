// Node script, `npm run bench`: what an assessment and a sealed pack cost here, cold and warm, in Node and in workerd. Judges nothing.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build, transform } from 'esbuild';
import { Miniflare } from 'miniflare';
import { bundle } from '../../worker/local/service/bundle.ts';
import { ROOT } from '../../worker/local/service/places.ts';
import { enlarged } from './enlarged.ts';

const AT = '2026-11-05T14:20:00+01:00';
const FIXTURE = join(ROOT, 'fixtures/visits/nose-wheel-full.json');
const RUNS = { assess: 200, seal: 20 } as const;
type Stage = keyof typeof RUNS;

/** Without its photographs and papers: they are looked into when they are handed in, and cost by their size. */
const text = readFileSync(FIXTURE, 'utf8').replace(/ {2}"attachments": \[[\s\S]*?\n {2}\],\n/, '');
const record = JSON.parse(text) as { release: { by: string } };

async function inNode(): Promise<Record<Stage, { coldMs: number; warmMs: number; cpuMs: number }>> {
  const startMs = performance.now();
  const { assess, seal } = await import('../../worker/core/core.ts');
  process.stdout.write(`Node: modules loaded in ${(performance.now() - startMs).toFixed(0)} ms\n`);
  const once: Record<Stage, () => Promise<void>> = {
    assess: async () => {
      await assess(JSON.parse(text), AT);
    },
    seal: async () => {
      const outcome = await assess(JSON.parse(text), AT);
      if (!outcome.ok) throw new Error('The record does not fit the schema');
      const read = outcome.assessed.assessmentSha256;
      const place = { pack: 'BENCH-P1-1', number: 1, issue: 1, visit: 'bench', before: [] };
      const sealed = await seal(
        outcome.assessed,
        { by: record.release.by, knowsOfNoHazard: true, at: AT, read },
        place,
      );
      if (!sealed.ok) throw new Error('The visit is not releasable');
    },
  };
  return { assess: await timed(once.assess, RUNS.assess), seal: await timed(once.seal, RUNS.seal) };
}

async function timed(
  run: () => Promise<void>,
  runs: number,
): Promise<{ coldMs: number; warmMs: number; cpuMs: number }> {
  const coldStart = performance.now();
  await run();
  const coldMs = performance.now() - coldStart;
  for (let warmUp = 0; warmUp < runs; warmUp++) await run();
  const times: number[] = [];
  const cpu = process.cpuUsage();
  for (let each = 0; each < runs; each++) {
    const start = performance.now();
    await run();
    times.push(performance.now() - start);
  }
  const { user, system } = process.cpuUsage(cpu);
  return { coldMs, warmMs: median(times), cpuMs: (user + system) / 1000 / runs };
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** Assessment of records with lists up to 20 times as long: linear when the last column stays level. */
async function growing(): Promise<void> {
  const { assess } = await import('../../worker/core/core.ts');
  for (const times of [1, 2, 5, 10, 20]) {
    const json = JSON.stringify(enlarged(record, times));
    const { warmMs } = await timed(async () => {
      const outcome = await assess(JSON.parse(json), AT);
      if (!outcome.ok) throw new Error(outcome.issues[0]?.sentence);
    }, 40);
    const kilobytes = json.length / 1000;
    process.stdout.write(
      `Node: assess a record of ${kilobytes.toFixed(0)} kB: ${warmMs.toFixed(1)} ms, ${((warmMs / kilobytes) * 1000).toFixed(0)} µs a kB\n`,
    );
  }
}

/** CPU time in ms of every workerd of this process, from the process table; 0 where there is none to read. */
function workerdCpuMs(): number {
  try {
    const table = execFileSync('ps', ['-eo', 'ppid=,cputimes=,comm='], { encoding: 'utf8' });
    const own = table
      .split('\n')
      .filter((line) => line.includes('workerd') && line.trim().startsWith(String(process.pid)));
    return own.reduce((sum, line) => sum + Number(line.trim().split(/\s+/)[1]) * 1000, 0);
  } catch {
    return 0;
  }
}

async function inWorkerd(): Promise<void> {
  const built = await build({
    entryPoints: [join(import.meta.dirname, 'bench-worker.ts')],
    bundle: true,
    format: 'esm',
    target: 'es2024',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    write: false,
    logLevel: 'error',
  });
  const script = built.outputFiles[0]?.text ?? '';
  const miniflare = new Miniflare({
    modules: true,
    script,
    cf: false,
    compatibilityDate: '2026-07-01',
    compatibilityFlags: ['nodejs_compat'],
  });
  const order = async (stage: Stage, runs: number): Promise<number> => {
    const start = performance.now();
    const body = JSON.stringify({ stage, runs, at: AT, record });
    const answer = await miniflare.dispatchFetch('http://bench.local/', { method: 'POST', body });
    if (!answer.ok) throw new Error(await answer.text());
    await answer.text();
    return performance.now() - start;
  };
  await miniflare.ready;
  for (const stage of ['assess', 'seal'] as const) {
    const coldMs = await order(stage, 1);
    await order(stage, RUNS[stage]);
    const cpuMs = workerdCpuMs();
    const wallMs = await order(stage, RUNS[stage]);
    const cpu = workerdCpuMs() - cpuMs;
    const warm = `warm ${(wallMs / RUNS[stage]).toFixed(2)} ms (mean of ${RUNS[stage]})`;
    process.stdout.write(
      `workerd: ${stage} cold ${coldMs.toFixed(0)} ms, ${warm}${cpu > 0 ? `, CPU about ${(cpu / RUNS[stage]).toFixed(1)} ms` : ''}\n`,
    );
  }
  await miniflare.dispose();
}

for (const [stage, { coldMs, warmMs, cpuMs }] of Object.entries(await inNode())) {
  process.stdout.write(
    `Node: ${stage} cold ${coldMs.toFixed(1)} ms, warm ${warmMs.toFixed(2)} ms (median), CPU ${cpuMs.toFixed(2)} ms\n`,
  );
}
await growing();
await inWorkerd();
// As wrangler deploys it: names shortened.
const { code } = await transform(readFileSync(await bundle(), 'utf8'), {
  minify: true,
  format: 'esm',
  target: 'es2024',
});
process.stdout.write(
  `Worker bundle: ${Math.round(code.length / 1000)} kB, gzip ${Math.round(gzipSync(code, { level: 9 }).length / 1000)} kB\n`,
);
