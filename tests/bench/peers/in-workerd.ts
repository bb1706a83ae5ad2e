import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { Miniflare } from 'miniflare';
import { noisePicture } from './noise-picture.ts';

async function bundled(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(import.meta.dirname, 'print-worker.ts')],
    bundle: true,
    format: 'esm',
    target: 'es2024',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    write: false,
    logLevel: 'error',
  });
  return outputFiles[0]?.text ?? '';
}

/** The most memory that a workerd of this process has held, in MB; undefined where there is no process table to read. */
function peakMb(): number | undefined {
  try {
    const table = execFileSync('ps', ['-eo', 'pid=,ppid=,comm='], { encoding: 'utf8' }).split('\n');
    const peaks = table.flatMap((line) => {
      const [pid, parent, name = ''] = line.trim().split(/\s+/);
      if (Number(parent) !== process.pid || !name.startsWith('workerd')) return [];
      return [Number(/VmHWM:\s*(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024];
    });
    return peaks.length > 0 ? Math.max(...peaks) : undefined;
  } catch {
    return undefined;
  }
}

/** One sentence on what so many pages and photographs cost in workerd: time and memory, the runtime itself included and apart. */
export async function inWorkerd(pages: number, photographs: number): Promise<string> {
  const compatibilityDate = '2026-07-01';
  const miniflare = new Miniflare({ modules: true, script: await bundled(), cf: false, compatibilityDate });
  const photograph = noisePicture(640, 600);
  const printed = async (count: number, shown: number): Promise<void> => {
    const address = `http://bench.local/?pages=${count}&photographs=${shown}`;
    const answer = await miniflare.dispatchFetch(address, { method: 'POST', body: photograph });
    if (!answer.ok) throw new Error(await answer.text());
    await answer.arrayBuffer();
  };
  await miniflare.ready;
  await printed(1, 0);
  const idleMb = peakMb();
  const startMs = performance.now();
  await printed(pages, photographs);
  const tookMs = performance.now() - startMs;
  const mostMb = peakMb();
  await miniflare.dispose();
  const memory =
    idleMb === undefined || mostMb === undefined
      ? 'memory unknown'
      : `peak ${mostMb.toFixed(0)} MB, of which ${idleMb.toFixed(0)} MB stood after one page`;
  const shown = photographs > 0 ? ` and ${photographs} photographs of ${(photograph.length / 1e6).toFixed(1)} MB` : '';
  return `workerd: ${pages} pages${shown} in ${tookMs.toFixed(0)} ms, ${memory}`;
}
